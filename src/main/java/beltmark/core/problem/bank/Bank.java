package beltmark.core.problem.bank;

import beltmark.core.problem.DrawnFamily;
import beltmark.core.problem.FamilyRanges;
import beltmark.core.problem.ProblemFamily;
import beltmark.core.problem.Recipe;
import beltmark.core.problem.bank.job.FaultFinding;
import beltmark.core.problem.bank.job.InstallationOrder;
import beltmark.core.problem.bank.job.LockoutOrder;
import beltmark.core.problem.bank.kit.KitCheck;
import beltmark.core.problem.bank.kit.TurningOver;
import beltmark.core.problem.bank.mark.BeltMarkCup;
import beltmark.core.problem.bank.mark.BracketSquare;
import beltmark.core.problem.bank.mark.FractionSums;
import beltmark.core.problem.bank.mark.PoleLengths;
import beltmark.core.problem.bank.mark.SlopingMountMarks;
import beltmark.core.problem.bank.mark.TapeReadings;
import beltmark.core.problem.bank.running.CarryingBack;
import beltmark.core.problem.bank.running.DragPower;
import beltmark.core.problem.bank.running.StoredEnergy;
import beltmark.core.problem.bank.running.WearAndRetension;
import beltmark.core.problem.bank.spring.BladeAngle;
import beltmark.core.problem.bank.spring.BounceByHand;
import beltmark.core.problem.bank.spring.NutTurning;
import beltmark.core.problem.bank.spring.SleeveTravel;
import beltmark.core.problem.bank.spring.SpringLoad;
import beltmark.core.problem.bank.spring.UnevenSides;
import beltmark.core.setup.HardwareCard;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;

/** Every family that is not a part of the set-up bench, by the id that its content file has. */
public final class Bank {

    private static final Map<String, BiFunction<FamilyRanges, List<HardwareCard>, Recipe>> RECIPES = Map.ofEntries(
            Map.entry("belt-mark-cup", BeltMarkCup::new),
            Map.entry("blade-angle", BladeAngle::new),
            Map.entry("bounce-test", BounceByHand::new),
            Map.entry("bracket-square", BracketSquare::new),
            Map.entry("carryback", CarryingBack::new),
            Map.entry("drag-power", DragPower::new),
            Map.entry("faults", FaultFinding::new),
            Map.entry("fraction-sums", FractionSums::new),
            Map.entry("installation-order", InstallationOrder::new),
            Map.entry("kit-check", KitCheck::new),
            Map.entry("lockout-order", LockoutOrder::new),
            Map.entry("mount-marks-sloping", SlopingMountMarks::new),
            Map.entry("nut-turns", NutTurning::new),
            Map.entry("pole-length", PoleLengths::new),
            Map.entry("sleeve-travel", SleeveTravel::new),
            Map.entry("spring-load", SpringLoad::new),
            Map.entry("stored-energy", StoredEnergy::new),
            Map.entry("tape-reading", TapeReadings::new),
            Map.entry("turning-over", TurningOver::new),
            Map.entry("uneven-sides", UnevenSides::new),
            Map.entry("wear-retension", WearAndRetension::new));

    private Bank() {}

    /** {@return the ids of all families} */
    public static Set<String> ids() {
        return RECIPES.keySet();
    }

    /**
     * Makes a family.
     *
     * @param ranges what its content file says
     * @param cards the hardware that is drawn from
     * @return the family, or empty when there is none of that id
     * @throws IllegalArgumentException when the file lacks a range that the family needs
     */
    public static Optional<ProblemFamily> make(FamilyRanges ranges, List<HardwareCard> cards) {
        BiFunction<FamilyRanges, List<HardwareCard>, Recipe> recipe = RECIPES.get(ranges.id());
        return recipe == null
                ? Optional.empty()
                : Optional.of(DrawnFamily.of(ranges.id(), ranges.version(), some -> recipe.apply(ranges, some), cards));
    }
}
