package beltmark.core.setup;

import beltmark.core.solution.Step;
import beltmark.core.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * The spring length from the card's chart, measured from the top of the washer to the top of the base and set the same
 * on both sides. The coil itself is shorter by the washer.
 *
 * @param tip the tip on the blade
 * @param blade the length of the blade
 * @param springLength from the top of the washer to the top of the base
 * @param washer the thickness of the washer
 */
public record SpringSetting(Tip tip, Length blade, Length springLength, Length washer) {

    /** {@return the setting for a blade, or empty when the card's chart has no such blade} */
    public static Optional<SpringSetting> fromChart(HardwareCard card, Tip tip, Length blade) {
        return card.tip(tip).springLength(blade).map(length -> new SpringSetting(tip, blade, length, card.washer()));
    }

    /** {@return the length of the coil alone at this setting} */
    public Length coil() {
        return springLength.minus(washer);
    }

    /** {@return the steps that lead to the setting} */
    public List<Step> steps() {
        return List.of(
                Step.of("spring-chart", "tip", tip.word()).with("blade", blade).with("springLength", springLength),
                Step.of("spring-washer", "springLength", springLength)
                        .with("washer", washer)
                        .with("coil", coil()));
    }
}
