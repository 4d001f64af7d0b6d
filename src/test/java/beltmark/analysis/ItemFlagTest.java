package beltmark.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.core.statistics.ItemFlag;
import beltmark.core.statistics.ItemStatistics;
import beltmark.core.statistics.Proportion;
import beltmark.core.statistics.Response;
import beltmark.core.statistics.ResponseCounts;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ItemFlagTest {

    private static final int TURNED = 3;

    @Test
    void anItemThatWorksIsNotFlagged() {
        assertEquals(Set.of(), flags(SampleTables.random(60, 12, 3), false));
    }

    @Test
    void aTurnedKeyShowsItself() {
        assertEquals(Set.of(ItemFlag.SUSPECT_KEY), flags(turned(SampleTables.random(60, 12, 3)), false));
    }

    @Test
    void belowThirtyPeopleNoCorrelationIsHeldAgainstAnItem() {
        assertEquals(Set.of(), flags(turned(SampleTables.random(29, 12, 3)), true));
    }

    @Test
    void aLittleBelowNothingTheKeyIsSuspectIfAnotherOptionLeads() {
        ResponseCounts counts = barelyNegative();
        assertTrue(ItemStatistics.of(counts, 0).correctedR().toOptional().orElseThrow() < 0);
        assertEquals(Set.of(ItemFlag.WEAK), ItemFlag.of(ItemStatistics.of(counts, 0), false));
        assertEquals(Set.of(ItemFlag.SUSPECT_KEY), ItemFlag.of(ItemStatistics.of(counts, 0), true));
    }

    /** 40 people: of those with one other item right 9 of 20 have it right, of those with none 10 of 20. */
    private static ResponseCounts barelyNegative() {
        ResponseCounts counts = new ResponseCounts(2);
        add(counts, 9, List.of(Response.RIGHT, Response.RIGHT));
        add(counts, 11, List.of(Response.WRONG, Response.RIGHT));
        add(counts, 10, List.of(Response.RIGHT, Response.WRONG));
        add(counts, 10, List.of(Response.WRONG, Response.WRONG));
        return counts;
    }

    private static void add(ResponseCounts counts, int people, List<Response> answers) {
        for (int i = 0; i < people; i++) {
            counts.add(answers);
        }
    }

    @Test
    void fewRightIsHardFromTenPeople() {
        assertEquals(Set.of(ItemFlag.HARD), flags(new Proportion(2, 10)));
        assertEquals(Set.of(), flags(new Proportion(3, 10)));
        assertEquals(Set.of(), flags(new Proportion(0, 9)));
    }

    @Test
    void allRightIsNotedFromTwentyPeople() {
        assertEquals(Set.of(ItemFlag.EVERYONE_PASSES), flags(new Proportion(20, 20)));
        assertEquals(Set.of(), flags(new Proportion(19, 19)));
        assertEquals(Set.of(), flags(new Proportion(20, 21)));
    }

    private static Set<ItemFlag> flags(Proportion hits) {
        ResponseCounts counts = new ResponseCounts(1);
        add(counts, (int) hits.hits(), List.of(Response.RIGHT));
        add(counts, (int) (hits.trials() - hits.hits()), List.of(Response.WRONG));
        return ItemFlag.of(ItemStatistics.of(counts, 0), false);
    }

    private static Set<ItemFlag> flags(List<List<Response>> answers, boolean anotherOptionLeads) {
        return ItemFlag.of(ItemStatistics.of(SampleTables.counted(answers), TURNED), anotherOptionLeads);
    }

    /** As if the wrong option were the key of one item. */
    private static List<List<Response>> turned(List<List<Response>> answers) {
        return answers.stream()
                .map(row -> {
                    List<Response> other = new ArrayList<>(row);
                    other.set(TURNED, row.get(TURNED) == Response.RIGHT ? Response.WRONG : Response.RIGHT);
                    return other;
                })
                .toList();
    }
}
