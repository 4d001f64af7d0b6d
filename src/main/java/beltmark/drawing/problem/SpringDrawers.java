package beltmark.drawing.problem;

import beltmark.core.problem.Part;
import beltmark.core.problem.bank.spring.BounceScene;
import beltmark.core.problem.bank.spring.LoadScene;
import beltmark.core.problem.bank.spring.NutScene;
import beltmark.core.problem.bank.spring.TravelScene;
import beltmark.core.problem.bank.spring.UnevenScene;
import beltmark.core.setup.SpringSetting;
import beltmark.core.units.Length;
import beltmark.drawing.Drawing;
import beltmark.drawing.spring.LoadedBlade;
import beltmark.drawing.spring.PushedDown;
import beltmark.drawing.spring.SleeveShowing;
import beltmark.drawing.spring.SpringView;
import java.util.List;

/** Draws the parts of the problems about springs. */
final class SpringDrawers {

    private SpringDrawers() {}

    /** The spring of the chart, its length asked or told. */
    static Drawing setting(SpringSetting setting, Length free, boolean told, Telling telling) {
        Length washer = setting.washer();
        return SpringView.setting(
                "spring-length", free.plus(washer), setting.springLength(), washer, told, telling.words());
    }

    static List<Drawing> load(LoadScene scene, Part part, Telling telling) {
        boolean told = telling.tells(part);
        Length free = scene.spring().free();
        Length washer = scene.card().washer();
        return List.of(
                part.id().equals("spring-load-setting")
                        ? SpringView.setting(part.id(), free.plus(washer), scene.set(), washer, told, telling.words())
                        : SpringView.coil(
                                part.id(),
                                free,
                                scene.setting().result().coil(),
                                washer,
                                told && part.id().equals("spring-load-coil"),
                                telling.words()));
    }

    static List<Drawing> nuts(NutScene scene, Part part, Telling telling) {
        return List.of(SpringView.pair(
                part.id(),
                scene.present().left(),
                scene.present().right(),
                scene.wanted(),
                scene.card().washer(),
                telling.words()));
    }

    static List<Drawing> uneven(UnevenScene scene, Part part, Telling telling) {
        boolean told = part.id().equals("uneven-ends") && telling.tells(part);
        return List.of(LoadedBlade.of(scene, told, telling.words()).named(part.id() + (told ? "-worked" : "")));
    }

    static List<Drawing> travel(TravelScene scene, Part part, Telling telling) {
        Length sleeve = scene.card().sleeve();
        Length washer = scene.card().washer();
        return switch (part.id()) {
            case "travel-sleeve" ->
                List.of(SleeveShowing.of(sleeve, scene.sleeve().result(), telling.tells(part), telling.words()));
            case "travel-coils" ->
                List.of(SpringView.setting(part.id(), scene.set(), scene.set(), washer, true, telling.words()));
            case "travel-limit" -> both(scene, part, telling);
            default -> List.of();
        };
    }

    /** What the sleeve shows now is drawn once its part is solved. */
    private static List<Drawing> both(TravelScene scene, Part part, Telling telling) {
        boolean told = telling.solved().contains("travel-sleeve");
        Length sleeve = scene.card().sleeve();
        Drawing showing = SleeveShowing.of(sleeve, scene.sleeve().result(), told, telling.words());
        Drawing spring = SpringView.setting(
                part.id(), scene.set(), scene.set(), scene.card().washer(), true, telling.words());
        return List.of(showing.named(part.id() + "-sleeve"), spring.named(part.id() + "-spring"));
    }

    static List<Drawing> bounce(BounceScene scene, Part part, Telling telling) {
        return part.id().equals("bounce-cause") || part.id().equals("bounce-frequency")
                ? List.of(PushedDown.of(scene.seen().drop(), telling.words()).named(part.id()))
                : List.of();
    }
}
