package beltmark;

import beltmark.content.Content;
import beltmark.content.ContentFile;
import beltmark.core.problem.Problem;
import beltmark.core.problem.ProblemCode;
import beltmark.core.problem.ProblemFamily;
import beltmark.core.problem.setup.SetupScene;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Situation;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.LengthReader;
import beltmark.core.units.LengthUnit;
import beltmark.texts.Language;
import beltmark.texts.Texts;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The one place for example hardware, problems and figures of tests. */
public final class Sample {

    private static final Content CONTENT = Content.read();
    private static final HardwareCard CARD =
            Content.read(ContentFile.list("hardware"), List.of()).cards().get(0);

    private static final Texts TEXTS = Texts.load(ZoneOffset.UTC);

    private Sample() {}

    /** {@return the card with the figures of the trade} */
    public static HardwareCard card() {
        return CARD;
    }

    /** {@return the content that is shipped} */
    public static Content content() {
        return CONTENT;
    }

    /** {@return a shipped family} */
    public static ProblemFamily family(String id) {
        return content().findFamily(id).orElseThrow();
    }

    /** {@return as many different codes as asked for} */
    public static Stream<ProblemCode> codes(int count) {
        return IntStream.range(0, count).mapToObj(i -> new ProblemCode(Integer.toString(i)));
    }

    /** {@return the place that a problem of the set-up is about} */
    public static Situation situation(Problem problem) {
        return ((SetupScene) problem.scene()).situation();
    }

    /** {@return a length as typed by an inch person} */
    public static Length inches(String typed) {
        return LengthReader.read(typed, LengthUnit.INCH).getLength();
    }

    /** {@return an English text with one value} */
    public static String says(String key, String name, Object value) {
        return TEXTS.words(Language.EN, Graduation.SIXTEENTH_INCH).say(key, java.util.Map.of(name, value));
    }

    /** {@return an English text without values} */
    public static String says(String key) {
        return TEXTS.words(Language.EN, Graduation.SIXTEENTH_INCH).say(key);
    }
}
