package beltmark.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.analysis.ResponseFault.Kind;
import beltmark.core.statistics.ItemStatistics;
import beltmark.core.statistics.Proportion;
import beltmark.core.statistics.Response;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ResponseReaderTest {

    private static final String PLAIN = "person,a,b\nAmina,1,0\nBjorn,0,\n";

    /** The same table in other dress; the sign ¶ stands for the end of a line. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "person,a,b¶Amina,1,0¶Bjorn,0,¶",
                "person,a,b¶Amina,1,0¶Bjorn,0,",
                "\uFEFFperson,a,b¶Amina,1,0¶Bjorn,0,¶",
                "\"person\",\"a\",\"b\"¶\"Amina, N.\",\"1\",\"0\"¶Bjorn,\"0\",\"\"¶",
                "person;a;b¶Amina;1;0¶Bjorn;0;¶",
                "person\ta\tb¶Amina\t1\t0¶Bjorn\t0\t¶",
                "person, a, b¶Amina, 1, 0¶Bjorn, 0, ¶",
                "¶person,a,b¶¶Amina,1,0¶Bjorn,0,¶¶"
            })
    void readsTheSameTableInOtherDress(String text) {
        for (String end : List.of("\n", "\r\n")) {
            ResponseTable table = SampleTables.table(text.replace("¶", end));
            assertTrue(table.hasHeader());
            assertEquals(Optional.of("person"), table.idColumn());
            assertEquals(List.of("a", "b"), table.items());
            assertEquals(new Proportion(1, 2), table.counts().hits(0));
            assertEquals(new Proportion(0, 1), table.counts().hits(1));
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1,0 0,1 1,1               | false | false | 2",
                "a,b 0,1 1,1               | true  | false | 2",
                "1,2,3 0,1,1 1,1,0         | true  | false | 3",
                "Ana,1,0 Bo,0,1            | false | true  | 2",
                "1,1,0 2,0,1 3,0,0         | false | true  | 2",
                "who,a,b 7,1,0 8,0,1       | true  | true  | 2",
                "ID,a,b 1,1,0              | true  | true  | 2",
                "a,b 1,1                   | true  | false | 2",
                "q 1 0                     | true  | false | 1",
                "person,q 1,1 2,0          | true  | true  | 1"
            })
    void findsHeadersAndNames(String rows, boolean header, boolean id, int items) {
        ResponseTable table = SampleTables.table(rows.replace(' ', '\n'));
        assertEquals(header, table.hasHeader());
        assertEquals(id, table.idColumn().isPresent());
        assertEquals(items, table.counts().items());
    }

    @Test
    void itemsWithoutAHeadingAreNumbered() {
        assertEquals(List.of("1", "2"), SampleTables.table("1,0\n0,1\n").items());
        assertEquals(
                List.of("a", "2"),
                SampleTables.table("person,a,\nAna,1,0\n").items().subList(0, 2));
    }

    @Test
    void aRowOfBlanksIsAPersonAndIsTold() {
        ResponseTable table = SampleTables.table(PLAIN + "Chidi,,\n");
        assertEquals(3, table.counts().scores().people());
        assertEquals(1, table.blankRows());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "a,b¶1,0¶1,x¶            | {cell=x, column=2, line=3, name=b}",
                "1,0¶1,0¶1,0¶2,1         | {cell=2, column=1, line=4, name=1}",
                "person,a¶Ana,1.0        | {cell=1.0, column=2, line=2, name=a}",
                "person,a¶Ana,-1         | {cell=-1, column=2, line=2, name=a}",
                "person,a¶Ana,true       | {cell=true, column=2, line=2, name=a}"
            })
    void saysWhichCellIsNoAnswer(String text, String where) {
        ResponseFault fault = fault(text.replace('¶', '\n'));
        assertEquals(Kind.NO_RESPONSE, fault.kind());
        assertEquals(where, new TreeMap<>(fault.values()).toString());
    }

    @Test
    void saysWhichRowHasOtherCells() {
        ResponseFault fault = fault("a,b\n1,0\n1\n");
        assertEquals(Kind.RAGGED, fault.kind());
        assertEquals(3L, fault.values().get("line"));
        assertEquals(Kind.RAGGED, fault("a,b\n1,0\n1,0,1\n").kind());
    }

    @Test
    void refusesWhatIsNoTable() {
        assertEquals(Kind.EMPTY, fault("").kind());
        assertEquals(Kind.EMPTY, fault("\uFEFF\n\n").kind());
        assertEquals(Kind.NO_ROWS, fault("person,a,b\n").kind());
        assertEquals(Kind.NO_ITEMS, fault("person\nAna\nBo\n").kind());
        assertEquals(Kind.QUOTES, fault("a,b\n1,\"0\n").kind());
        assertEquals(Kind.QUOTES, fault("a,b\n1,\"0\"1\n").kind());
        assertEquals(
                Kind.TOO_WIDE,
                fault("1,".repeat(ResponseReader.MOST_ITEMS) + "1").kind());
    }

    /** Rows beyond those that show the layout are read one by one; a fault in them is told by line too. */
    @Test
    void readsOnBeyondTheRowsThatShowTheLayout() {
        String rows =
                IntStream.range(0, 3000).mapToObj(row -> "p" + row + ",1,0\n").reduce("", String::concat);
        assertEquals(
                3000,
                SampleTables.table("person,a,b\n" + rows).counts().scores().people());
        assertEquals(3002L, fault("person,a,b\n" + rows + "p,1,?\n").values().get("line"));
    }

    @Test
    void writtenAndReadAgainIsTheSame() {
        List<List<Response>> answers = SampleTables.random(50, 6, 4);
        ResponseTable table = SampleTables.table(SampleTables.text(answers));
        for (int item = 0; item < 6; item++) {
            assertEquals(
                    ItemStatistics.of(SampleTables.counted(answers), item), ItemStatistics.of(table.counts(), item));
        }
        assertFalse(table.idColumn().isEmpty());
    }

    private static ResponseFault fault(String text) {
        return assertThrows(ResponseFault.class, () -> SampleTables.table(text));
    }
}
