package beltmark.ownrecord;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Records as files: rows after RFC 4180 or JSON. The columns have the same names in every language, for programs. */
final class OwnRecordFile {

    private static final JsonMapper MAPPER = new JsonMapper();
    private static final String FORMULA_STARTS = "=+-@\t\r\0";

    private OwnRecordFile() {}

    /** {@return the rows; a name that a spreadsheet would take for a formula gets an apostrophe in front} */
    static String csv(List<OwnEntry> entries) {
        StringBuilder file = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(file, CSVFormat.RFC4180)) {
            printer.printRecord("record", "kind", "about", "by", "happened_at", "recorded_at", "body");
            for (OwnEntry entry : entries) {
                printer.printRecord(
                        entry.record(),
                        entry.kind(),
                        guarded(entry.about()),
                        guarded(entry.by()),
                        entry.happenedAt(),
                        entry.recordedAt(),
                        entry.body());
            }
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory failed", e);
        }
        return file.toString();
    }

    /** {@return an array of objects; each body is the very text that is in the record book} */
    static String json(List<OwnEntry> entries) {
        StringWriter file = new StringWriter();
        try (JsonGenerator json = MAPPER.createGenerator(file)) {
            json.writeStartArray();
            for (OwnEntry entry : entries) {
                json.writeRaw('\n');
                write(json, entry);
            }
            json.writeEndArray();
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory failed", e);
        }
        return file + "\n";
    }

    private static void write(JsonGenerator json, OwnEntry entry) throws IOException {
        json.writeStartObject();
        json.writeNumberField("record", entry.record());
        json.writeStringField("kind", entry.kind());
        json.writeStringField("about", entry.about());
        json.writeStringField("by", entry.by());
        json.writeStringField("happened_at", entry.happenedAt().toString());
        json.writeStringField("recorded_at", entry.recordedAt().toString());
        json.writeFieldName("body");
        json.writeRawValue(entry.body());
        json.writeEndObject();
    }

    private static String guarded(String text) {
        return !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }
}
