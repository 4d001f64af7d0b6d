package beltmark.core.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SmallGroupsTest {

    /** Groups as name=people. */
    @ParameterizedTest
    @CsvSource({
        "A=10 B=30, ''",
        "A=9 B=30, A B",
        "A=5 B=5 C=30, A B",
        "A=5 B=4 C=30 D=12, A B D",
        "A=3, A",
        "A=0 B=12, ''",
        "A=1 B=10 C=10, A B",
        "A=9 B=9 C=9 D=40, A B C"
    })
    void holdsBackUntilTenAreTogether(String groups, String heldBack) {
        Map<String, Long> sizes = Arrays.stream(groups.split(" ", -1))
                .map(group -> group.split("=", -1))
                .collect(Collectors.toMap(group -> group[0], group -> Long.valueOf(group[1])));

        assertEquals(heldBack, String.join(" ", new TreeSet<>(SmallGroups.heldBack(sizes))));
    }
}
