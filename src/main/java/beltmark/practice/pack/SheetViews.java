package beltmark.practice.pack;

import beltmark.core.problem.Blank;
import beltmark.core.problem.OwnFigures;
import beltmark.core.problem.Part;
import beltmark.core.problem.Problem;
import beltmark.drawing.Drawing;
import beltmark.drawing.problem.ProblemDrawings;
import beltmark.drawing.problem.Telling;
import beltmark.practice.pack.SheetView.KeyLine;
import beltmark.practice.pack.SheetView.PartView;
import beltmark.practice.pack.SheetView.ProblemView;
import beltmark.problem.BlankFields;
import beltmark.problem.ProblemWords;
import beltmark.texts.Texts;
import beltmark.texts.Words;
import beltmark.web.Told;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Makes what is printed of a pack. */
final class SheetViews {

    private final Packs packs;
    private final Texts texts;
    private int drawn;

    SheetViews(Packs packs, Texts texts) {
        this.packs = packs;
        this.texts = texts;
    }

    List<SheetView> of(Pack pack) {
        return pack.sheets().stream().map(this::sheet).toList();
    }

    private SheetView sheet(Pack.Sheet sheet) {
        Words words = texts.words(sheet.person().language(), sheet.person().graduation());
        List<ProblemView> problems = new ArrayList<>();
        sheet.problems().forEach(asked -> problems.add(problem(words, problems.size() + 1, packs.problem(asked))));
        return new SheetView(words, sheet.person(), problems);
    }

    private ProblemView problem(Words words, int number, Problem problem) {
        ProblemWords told = new ProblemWords(words);
        return new ProblemView(
                number,
                problem.code().text(),
                told.title(problem.family()),
                told.story(problem.family()),
                told.told(problem.givens()),
                problem.parts().stream().map(part -> part(words, problem, part)).toList());
    }

    private PartView part(Words words, Problem problem, Part part) {
        ProblemWords told = new ProblemWords(words);
        BlankFields fields = new BlankFields(words, part);
        return new PartView(
                told.title(part),
                told.ask(part),
                told.told(part.givens()),
                told.exhibits(part),
                drawings(new Telling(problem, Set.of(), OwnFigures.NONE, words), part),
                part.blanks().stream()
                        .map(blank -> fields.field(blank, "", null))
                        .toList(),
                part.blanks().stream().map(blank -> key(told, part, blank)).toList());
    }

    /** Ids of drawings are unlike on all sheets of a file. */
    private List<Drawing> drawings(Telling telling, Part part) {
        return ProblemDrawings.of(part, telling).stream()
                .map(drawing -> drawing.named("drawing-" + ++drawn))
                .toList();
    }

    private static KeyLine key(ProblemWords told, Part part, Blank blank) {
        List<Told> slips = blank.wrongAnswers().stream()
                .map(wrong -> new Told(told.told(blank, wrong.answer()), told.slip(part.id(), wrong.slip())))
                .toList();
        return new KeyLine(told.label(part, blank), told.told(blank, blank.right()), slips);
    }
}
