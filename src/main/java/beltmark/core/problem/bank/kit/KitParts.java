package beltmark.core.problem.bank.kit;

import beltmark.core.problem.Exhibit;
import beltmark.core.problem.Part;
import beltmark.core.solution.Step;
import beltmark.core.units.Quantity;
import beltmark.core.units.Ratio;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** What is asked of a kit. */
final class KitParts {

    private KitParts() {}

    static Part missing(KitScene scene) {
        Picks picks = new Picks("kit-nothing-missing", options(scene.tooFew()));
        picks.slip("one-side-for-both", lines(scene, line -> scene.lying(line) < line.asked()));
        picks.slip("both-sides-for-whole", lines(scene, line -> scene.lying(line) < 2 * line.asked()));
        if (!scene.spare().isEmpty()) {
            picks.slip("spare-for-missing", options(scene.spare()));
        }
        picks.slip("missing-overlooked", List.of());
        Map<String, String> each = new HashMap<>();
        scene.lines().forEach(line -> each.put(line.option(), "is-there"));
        scene.tooFew()
                .forEach(line -> each.put(line.option(), scene.lying(line) > 0 ? "one-of-pair" : "absent-overlooked"));
        return new Part(
                "kit-missing",
                List.of(),
                exhibits(scene),
                List.of(picks.blank("missing", options(scene.lines()), each)),
                scene.tooFew().isEmpty()
                        ? List.of(Step.of(
                                "kit-complete", "lines", Ratio.of(scene.lines().size())))
                        : scene.tooFew().stream()
                                .map(line -> tooFew(scene, line))
                                .toList());
    }

    private static Step tooFew(KitScene scene, KitLine line) {
        return Step.of("kit-too-few", "part", KitLine.word(line.option()))
                .with("needed", Ratio.of(line.needed()))
                .with("lying", Ratio.of(scene.lying(line)))
                .with("missing", Ratio.of(line.needed() - scene.lying(line)));
    }

    static Part foreign(KitScene scene) {
        Picks picks = new Picks("kit-nothing-foreign", scene.foreign());
        List<String> spare = options(scene.spare());
        if (!spare.isEmpty()) {
            picks.slip(
                    "spare-for-foreign",
                    Stream.concat(scene.foreign().stream(), spare.stream()).toList());
        }
        List<String> tooFew = lines(scene, line -> scene.tooFew().contains(line) && scene.lying(line) > 0);
        if (!tooFew.isEmpty()) {
            picks.slip("too-few-for-foreign", tooFew);
        }
        picks.slip("foreign-overlooked", List.of());
        Map<String, String> each = new HashMap<>();
        scene.lines().forEach(line -> each.put(line.option(), "belongs"));
        spare.forEach(option -> each.put(option, "spare-for-foreign"));
        scene.foreign()
                .forEach(option -> each.put(
                        option, option.startsWith("kit-blade") ? "other-tip-overlooked" : "one-foreign-overlooked"));
        return new Part(
                "kit-foreign",
                List.of(),
                exhibits(scene),
                List.of(picks.blank("foreign", List.copyOf(scene.lying().keySet()), each)),
                foreignSteps(scene));
    }

    private static List<Step> foreignSteps(KitScene scene) {
        List<Step> steps = new ArrayList<>();
        scene.spare()
                .forEach(line -> steps.add(Step.of("kit-spare", "part", KitLine.word(line.option()))
                        .with("spare", Ratio.of(scene.lying(line) - line.needed()))));
        scene.foreign().forEach(option -> steps.add(Step.of("kit-not-listed", "part", KitLine.word(option))));
        if (scene.foreign().isEmpty()) {
            steps.add(Step.of("kit-all-listed", "kinds", Ratio.of(scene.lying().size())));
        }
        return steps;
    }

    private static List<String> lines(KitScene scene, Predicate<KitLine> which) {
        return options(scene.lines().stream().filter(which).toList());
    }

    private static List<String> options(List<KitLine> lines) {
        return lines.stream().map(KitLine::option).toList();
    }

    private static List<Exhibit> exhibits(KitScene scene) {
        return List.of(
                new Exhibit(
                        "kit-list",
                        List.of("kit-part", "kit-asked", "kit-for"),
                        scene.lines().stream()
                                .map(line -> List.<Quantity>of(
                                        KitLine.word(line.option()),
                                        Ratio.of(line.asked()),
                                        KitLine.word(line.eachSide() ? "kit-each-side" : "kit-whole")))
                                .toList()),
                new Exhibit(
                        "kit-tailgate",
                        List.of("kit-part", "kit-lying"),
                        scene.lying().entrySet().stream()
                                .map(one -> List.<Quantity>of(KitLine.word(one.getKey()), Ratio.of(one.getValue())))
                                .toList()));
    }
}
