package beltmark;

import beltmark.Browser.Reply;
import beltmark.core.problem.Answer;
import beltmark.core.problem.Blank;
import beltmark.core.problem.Part;
import beltmark.core.problem.Problem;
import beltmark.core.problem.ProblemCode;
import beltmark.core.units.Graduation;
import beltmark.core.units.LengthPrinter;
import java.util.ArrayList;
import java.util.List;

/** Works practice problems the way a person would, knowing the answers. */
public final class SampleWork {

    private SampleWork() {}

    /** {@return the page after every part of a problem was answered right at once} */
    public static Reply clean(Browser browser, String family, String code) {
        Problem problem = Sample.family(family).problem(new ProblemCode(code));
        String path = "/practice/" + family + "/" + code;
        Reply page = browser.get(path);
        for (Part part : problem.parts()) {
            page = page.sendTo(path + "/" + part.id(), right(part));
        }
        return page;
    }

    private static String[] right(Part part) {
        List<String> fields = new ArrayList<>();
        for (Blank blank : part.blanks()) {
            fields.add(blank.id());
            fields.add(toTyped(blank.right()));
        }
        return fields.toArray(String[]::new);
    }

    private static String toTyped(Answer answer) {
        return answer instanceof Answer.OfLength length
                ? LengthPrinter.print(length.length(), Graduation.SIXTY_FOURTH_INCH)
                : ((Answer.OfChoice) answer).option();
    }
}
