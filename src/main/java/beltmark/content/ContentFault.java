package beltmark.content;

/**
 * One thing wrong with a content file.
 *
 * @param file path of the file, as in the source tree
 * @param line line of the fault, from 1; 0 when the fault is in no particular line
 * @param text a sentence for whoever edits the file
 */
public record ContentFault(String file, int line, String text) {

    @Override
    public String toString() {
        return file + (line > 0 ? ":" + line : "") + ": " + text;
    }
}
