package beltmark.drawing.problem;

import beltmark.core.problem.Part;
import beltmark.core.problem.Scene;
import beltmark.core.problem.bank.mark.BracketScene;
import beltmark.core.problem.bank.mark.CupScene;
import beltmark.core.problem.bank.mark.FractionScene;
import beltmark.core.problem.bank.mark.PoleScene;
import beltmark.core.problem.bank.mark.SlopingScene;
import beltmark.core.problem.bank.mark.TapeScene;
import beltmark.core.problem.bank.running.RunningScene;
import beltmark.core.problem.bank.spring.AngleScene;
import beltmark.core.problem.bank.spring.BounceScene;
import beltmark.core.problem.bank.spring.LoadScene;
import beltmark.core.problem.bank.spring.NutScene;
import beltmark.core.problem.bank.spring.TravelScene;
import beltmark.core.problem.bank.spring.UnevenScene;
import beltmark.core.problem.setup.SetupScene;
import beltmark.drawing.Drawing;
import java.util.List;
import java.util.Map;

/** Finds who draws a problem, by its scene. */
public final class ProblemDrawings {

    private static final Map<Class<? extends Scene>, PartDrawer<Scene>> DRAWERS = Map.ofEntries(
            entry(AngleScene.class, new AngleDrawer()),
            entry(BounceScene.class, SpringDrawers::bounce),
            entry(BracketScene.class, MarkDrawers::bracket),
            entry(CupScene.class, MarkDrawers::cup),
            entry(PoleScene.class, MarkDrawers::pole),
            entry(SlopingScene.class, MarkDrawers::sloping),
            entry(FractionScene.class, new FractionDrawer()),
            entry(LoadScene.class, SpringDrawers::load),
            entry(NutScene.class, SpringDrawers::nuts),
            entry(RunningScene.class, new RunningDrawer()),
            entry(SetupScene.class, new SetupDrawer()),
            entry(TapeScene.class, new TapeDrawer()),
            entry(TravelScene.class, SpringDrawers::travel),
            entry(UnevenScene.class, SpringDrawers::uneven));

    private ProblemDrawings() {}

    private static <S extends Scene> Map.Entry<Class<? extends Scene>, PartDrawer<Scene>> entry(
            Class<S> scene, PartDrawer<S> drawer) {
        return Map.entry(scene, (any, part, telling) -> drawer.draw(scene.cast(any), part, telling));
    }

    /** {@return the drawings of a part; none for a scene that nobody draws} */
    public static List<Drawing> of(Part part, Telling telling) {
        Scene scene = telling.problem().scene();
        PartDrawer<Scene> drawer = DRAWERS.get(scene.getClass());
        return drawer == null ? List.of() : drawer.draw(scene, part, telling);
    }
}
