package beltmark.core.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ProblemCodeTest {

    @ParameterizedTest
    @ValueSource(strings = {"7K3M1Q", "7k3m1q", " 7K3-M1Q ", "7K3 MIQ", "7K3MLQ"})
    void readsACodeHoweverItIsPassedOn(String typed) {
        assertEquals(Optional.of(new ProblemCode("7K3M1Q")), ProblemCode.parse(typed));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   ", "7K3?", "é", "123456789012", "../etc", "<b>"})
    void refusesWhatIsNoCode(String typed) {
        assertTrue(ProblemCode.parse(typed).isEmpty());
    }

    @Test
    void freshCodesAreShortAndReadable() {
        ProblemCode code = ProblemCode.fresh(new SplittableRandom(1));
        assertEquals(Optional.of(code), ProblemCode.parse(code.text()));
        assertEquals(6, code.text().length());
    }

    @Test
    void zerosInFrontAndAnotherFamilyMakeAnotherDraw() {
        ProblemCode code = new ProblemCode("7K3M1Q");
        assertNotEquals(first("bench", code), first("bench", new ProblemCode("07K3M1Q")));
        assertNotEquals(first("bench", code), first("mount-marks", code));
    }

    private static int first(String family, ProblemCode code) {
        return Draw.of(family, code).below(1_000_000);
    }

    @Test
    void drawsTheSameNumbersOnEveryMachineAndEveryJdk() {
        Draw draw = Draw.of("bench", new ProblemCode("7K3M1Q"));
        assertEquals("431 916 814", draw.below(1000) + " " + draw.below(1000) + " " + draw.below(1000));
    }
}
