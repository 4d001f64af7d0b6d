package beltmark.sheet;

import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Tip;
import beltmark.core.setup.TipCard;
import beltmark.core.units.LengthUnit;
import beltmark.web.Option;
import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The form of a set-up sheet.
 *
 * @param view what all pages share
 * @param form what was typed
 * @param faults what could not be read, by field, worded
 * @param cards the hardware to pick from
 */
public record EntryPage(View view, SheetForm form, Map<SheetField, String> faults, List<HardwareCard> cards)
        implements Page {

    public EntryPage {
        faults = Map.copyOf(faults);
        cards = List.copyOf(cards);
    }

    /**
     * A field as the template shows it.
     *
     * @param name its name
     * @param label what is asked
     * @param hint how to answer, or null
     * @param value what was typed
     * @param error what is wrong with it, or null
     */
    public record Field(
            String name,
            String label,
            @Nullable String hint,
            String value,
            @Nullable String error) {}

    /** {@return what the form asks, in which words of the trade are looked for} */
    public List<String> sentences() {
        return Stream.of(SheetField.values())
                .map(field -> view.text("sheet.field." + field.id()))
                .toList();
    }

    /** {@return a field by its name} */
    public Field field(String id) {
        SheetField field = SheetField.named(id).findFirst().orElseThrow();
        String hint = "sheet.hint." + id;
        return new Field(
                id,
                view.text("sheet.field." + id),
                view.words().has(hint) ? view.text(hint) : null,
                form.text(field),
                faults.get(field));
    }

    /** {@return several fields, named in one go} */
    public List<Field> fields(String... ids) {
        return Stream.of(ids).map(this::field).toList();
    }

    /** {@return whether anything could not be read} */
    public boolean hasFaults() {
        return !faults.isEmpty();
    }

    /** {@return in which unit a length without one is read} */
    public String unitHint() {
        return view.text(inInches() ? "sheet.unit-hint.in" : "sheet.unit-hint.mm");
    }

    /** {@return the unit that a speed without one is read in} */
    public String speedUnit() {
        return view.text(inInches() ? "sheet.speed-unit.in" : "sheet.speed-unit.mm");
    }

    private boolean inInches() {
        return view.words().graduation().unit() == LengthUnit.INCH;
    }

    /** {@return the hardware to pick from, each with the blades of its chart} */
    public List<Option> cardOptions() {
        return cards.stream()
                .map(card -> new Option(
                        card.id(),
                        view.text(
                                "sheet.card-option",
                                "card",
                                view.text("hardware.name." + card.id()),
                                "blades",
                                blades(card))))
                .toList();
    }

    private String blades(HardwareCard card) {
        List<TipCard.Setting> chart = card.tip(Tip.CARBIDE).chart();
        return view.text(
                "sheet.blades",
                "from",
                view.length(chart.get(0).blade()),
                "to",
                view.length(chart.get(chart.size() - 1).blade()));
    }

    /** {@return the tips to pick from} */
    public List<Option> tipOptions() {
        return Stream.of(Tip.values())
                .map(tip -> new Option(tip.id(), view.text(tip.word().key())))
                .toList();
    }

    /** {@return where something may be in the way} */
    public List<Option> obstacleOptions() {
        return options("sheet.obstacle.", "none", "above", "below");
    }

    /** {@return which way the tensioner may be off its mark} */
    public List<Option> wayOptions() {
        return options("sheet.way.", "high", "low");
    }

    private List<Option> options(String prefix, String... ids) {
        return Stream.of(ids).map(id -> new Option(id, view.text(prefix + id))).toList();
    }
}
