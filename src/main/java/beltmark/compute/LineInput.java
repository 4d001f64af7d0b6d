package beltmark.compute;

import java.io.IOException;
import java.io.Reader;
import org.jspecify.annotations.Nullable;

/** Lines of a stream of any length; a line that is too long is passed over without being kept. */
public final class LineInput {

    private static final int LONGEST = 100_000;
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private final Reader in;
    private @Nullable String line;
    private boolean first = true;

    /** Reads lines from a reader, which should be buffered. */
    public LineInput(Reader in) {
        this.in = in;
    }

    /** Goes to the next line; false when there is none. */
    public boolean next() throws IOException {
        StringBuilder text = new StringBuilder();
        int read = in.read();
        if (read < 0) {
            return false;
        }
        long length = 0;
        for (; read >= 0 && read != '\n'; read = in.read()) {
            length++;
            if (length <= LONGEST) {
                text.append((char) read);
            }
        }
        line = length > LONGEST ? null : withoutMark(text.toString());
        first = false;
        return true;
    }

    private String withoutMark(String text) {
        return first && !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
    }

    /** {@return the line without its end; null when it was too long} */
    public @Nullable String line() {
        return line;
    }
}
