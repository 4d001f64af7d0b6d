package beltmark.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Sample;
import beltmark.core.problem.bank.Bank;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ContentTest {

    private static final ContentFile CARD = ContentFile.list("hardware").get(0);

    @Test
    void theShippedContentHasNoFault() {
        assertEquals(3, Sample.content().cards().size());
        Set<String> expected = new TreeSet<>(List.of("bench", "mount-marks", "orientation", "spring-length"));
        expected.addAll(Bank.ids());
        assertEquals(
                expected,
                Sample.content().families().stream()
                        .map(family -> family.id())
                        .collect(Collectors.toCollection(TreeSet::new)));
    }

    @ParameterizedTest
    @CsvSource({
        // what stands in the file, what is put there instead, where the fault is told, part of the sentence
        "'washer: 1/8 in', '', 4, The field washer is missing",
        "'washer: 1/8 in', 'washer: 1/8', 14, such as 4 1/4 in",
        "'washer: 1/8 in', 'washer: thick', 14, thick",
        "'activeCoils: 5', 'activeCoils: -5', 10, a number above 0",
        "'springLength: 3 3/4 in', 'springLength: 4 3/4 in', 26, loose",
        "'springLength: 3 3/4 in', 'springLength: 1 in', 26, coil-bound",
        "'blade: 1300 mm, springLength: 3 5/8 in', 'blade: 100 mm, springLength: 3 5/8 in', 27, shortest blade",
        "'ends: squared-ground', 'ends: pointed', 11, one of",
        "'id: test-card', 'id: other-card', 4, file's name",
        "'version: 1', 'version: 1\nversion: 2', 6, not valid YAML"
    })
    void aFaultIsToldWithFileLineAndSentence(String original, String changed, int line, String sentence) {
        ContentFault fault = faults(CARD.text().replace(original, changed)).get(0);
        assertEquals("hardware/test-card.yaml", fault.file());
        assertEquals(line, fault.line(), fault::toString);
        assertTrue(fault.text().contains(sentence), fault::toString);
    }

    @Test
    void allFaultsAreToldAtOnce() {
        String broken = CARD.text()
                .replace("washer: 1/8 in", "washer: thick")
                .replace("sleeve: 1 1/2 in", "")
                .replace("blade: 900 mm", "blade: wide");
        assertEquals(4, faults(broken).size());
    }

    private static List<ContentFault> faults(String text) {
        ContentFile file = new ContentFile(CARD.path(), text.getBytes(StandardCharsets.UTF_8));
        return assertThrows(ContentFaults.class, () -> Content.read(List.of(file), List.of()))
                .faults();
    }
}
