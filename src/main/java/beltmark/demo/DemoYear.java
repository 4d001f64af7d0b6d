package beltmark.demo;

import beltmark.content.ContentFile;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.util.List;

/**
 * The past year as the file {@code demo-data/year.yaml} has it; days are counted back from the first start.
 *
 * @param practice problems worked
 * @param lockout quizzes sat
 * @param demonstrations set-ups shown and signed
 * @param events what the coordinator put on record about somebody
 */
public record DemoYear(List<Practised> practice, List<Sat> lockout, List<Shown> demonstrations, List<Happened> events) {

    private static final ObjectReader READER = new YAMLMapper(YAMLFactory.builder()
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .build())
            .readerFor(DemoYear.class);

    /** Something that somebody did on a day. */
    sealed interface Event {

        int daysAgo();
    }

    /**
     * Problems worked on one day.
     *
     * @param who the person
     * @param daysAgo when
     * @param families the families, each as often as {@code clean} says
     * @param clean how many of each with every part right at the first answer
     * @param slips how many of each with a slip that was corrected
     */
    record Practised(String who, int daysAgo, List<String> families, int clean, int slips) implements Event {}

    /**
     * The lockout quiz sat.
     *
     * @param who the person
     * @param daysAgo when
     * @param misses the questions that were missed
     */
    record Sat(String who, int daysAgo, List<String> misses) implements Event {}

    /**
     * A set-up shown and signed.
     *
     * @param who the person
     * @param by the supervisor
     * @param daysAgo when
     * @param card the hardware card
     * @param tip the tip
     * @param conveyor where
     */
    record Shown(String who, String by, int daysAgo, String card, String tip, String conveyor) implements Event {}

    /**
     * An event that a qualification may hang on.
     *
     * @param who the person
     * @param by who put it on record
     * @param daysAgo when
     * @param event the id of the event
     * @param reason why, in words
     */
    record Happened(String who, String by, int daysAgo, String event, String reason) implements Event {}

    public DemoYear {
        practice = List.copyOf(practice);
        lockout = List.copyOf(lockout);
        demonstrations = List.copyOf(demonstrations);
        events = List.copyOf(events);
    }

    /** {@return what the file shipped with the program says} */
    public static DemoYear read() {
        ContentFile file = ContentFile.list("demo-data").stream()
                .filter(shipped -> shipped.name().equals("year.yaml"))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("demo-data/year.yaml is not in the program"));
        try {
            return READER.readValue(file.text());
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(file.path() + ": " + e.getMessage(), e);
        }
    }
}
