package beltmark.sheet;

import beltmark.core.blade.BladeLoad;
import beltmark.core.blade.LoadError;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Orientation;
import beltmark.core.sheet.Found;
import beltmark.core.sheet.Installation;
import beltmark.core.sheet.Mounting;
import beltmark.core.sheet.Passing;
import beltmark.core.sheet.Running;
import beltmark.core.sheet.SetupSheet;
import beltmark.core.sheet.Springs;
import beltmark.core.units.Length;
import beltmark.core.units.PreciseLength;
import beltmark.core.units.Quantity;
import beltmark.texts.Words;
import beltmark.web.Told;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Words the figures of a sheet that are not set with a tape, group by group, so that three columns come out even. */
final class SheetGroups {

    private static final double PER_CENT = 100;

    private final Words words;
    private final SetupSheet sheet;
    private final Installation installation;

    SheetGroups(Words words, SetupSheet sheet) {
        this.words = words;
        this.sheet = sheet;
        this.installation = sheet.installation();
    }

    List<Group> groups() {
        return List.of(
                group("way", way()),
                group("across", across()),
                group("springs", springs()),
                group("splice", splice()),
                group("running", running()));
    }

    private Group group(String id, List<Told> lines) {
        return new Group(words.say("sheet.group." + id), lines);
    }

    private List<Told> way() {
        Mounting mounting = sheet.mounting();
        List<Told> lines = new ArrayList<>();
        lines.add(line("way", mounting.way(), Orientation::word));
        lines.add(told("gap-overslung", gap(mounting.gaps().overslungGap())));
        lines.add(told("gap-underslung", gap(mounting.gaps().underslungGap())));
        lines.add(line("clearance", mounting.gaps().clearance()));
        lines.add(line("offset", mounting.marks(), marks -> marks.offset()));
        if (installation.slope().degrees() > 0) {
            lines.add(line("slope", installation.slope()));
            lines.add(line(
                    "offset-plumb",
                    mounting.offset(),
                    offset -> offset.plumbReading().toLength()));
        }
        return lines;
    }

    private String gap(Length gap) {
        return gap.isNegative() ? words.say("sheet.in-the-way", Map.of("overlap", gap.abs())) : words.length(gap);
    }

    private List<Told> springs() {
        Springs springs = sheet.springs();
        HardwareCard card = installation.card();
        return List.of(
                line("setting-from", springs.setting(), set -> set.basis()),
                line("computed", springs.computed(), computed -> computed.measured()),
                line("coil", springs.setting(), set -> set.measured().minus(card.washer())),
                line("each", springs.load(), BladeLoad::left),
                line("load", springs.load(), BladeLoad::load),
                line("line-load", springs.load(), BladeLoad::lineLoad),
                line("wanted", card.blade().wanted(installation.situation().tip())),
                told("off-by-one", text(springs.perGraduation(), this::offByOne)),
                told(
                        "uneven",
                        text(
                                springs.uneven(),
                                ends -> words.say(
                                        "sheet.uneven", Map.of("light", ends.left(), "heavy", ends.right())))),
                told(
                        "nut",
                        text(
                                springs.nut(),
                                nut -> words.say("sheet.turns", Map.of("turns", nut.turns(), "flats", nut.flats())))));
    }

    private String offByOne(LoadError error) {
        double share = sheet.springs()
                .load()
                .result()
                .map(load -> error.worst().newtons() / load.load().newtons())
                .orElse(0.0);
        return words.say("sheet.off-by-one", Map.of("force", error.worst(), "percent", words.number(share * PER_CENT)));
    }

    private List<Told> splice() {
        Passing passing = sheet.passing();
        return List.of(
                line("splice", installation.situation().splice()),
                line("sleeve-over", passing.sleeveOverSplice(), left -> left),
                told(
                        "travel",
                        text(
                                passing.splice(),
                                splice -> words.say(
                                        "sheet.travel", Map.of("travel", splice.travel(), "limit", splice.limit())))),
                line("margin", passing.splice(), splice -> splice.margin()),
                line("coil-margin", passing.coilMargin(), margin -> margin),
                line("load-over", passing.splice(), splice -> splice.load()),
                line("bounce", passing.frequency(), frequency -> frequency),
                line("belt-passed", passing.back(), back -> back.beltPassed()));
    }

    private List<Told> running() {
        Running running = sheet.running();
        return List.of(
                line("pressure", running.pressure(), pressure -> pressure),
                line("wear", running.wear(), wear -> new PreciseLength(wear.millimetres())),
                line("drag", running.drag(), drag -> drag.force()),
                line("power", running.drag(), drag -> drag.power()),
                line("speed", installation.beltSpeed()));
    }

    private List<Told> across() {
        return List.of(
                line("wall", sheet.across().centring(), centring -> centring.leftWall()),
                line("edge", sheet.across().centring(), centring -> centring.edgeMargin()),
                line("pole", sheet.across().pole(), pole -> pole),
                line("span", installation.card().blade().span(installation.blade())),
                line("mass", installation.card().blade().moving(installation.blade())));
    }

    private Told line(String id, Quantity quantity) {
        return told(id, words.quantity(quantity));
    }

    private <T> Told line(String id, Found<T> found, Function<T, Quantity> figure) {
        return told(id, text(found, result -> words.quantity(figure.apply(result))));
    }

    private <T> String text(Found<T> found, Function<T, String> wording) {
        return found.result().map(wording).orElse(words.say("sheet.none"));
    }

    private Told told(String id, String value) {
        return new Told(words.say("sheet.line." + id), value);
    }
}
