package beltmark.problem;

import beltmark.web.Option;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One blank as a field of a form.
 *
 * @param name the field's name; items and things have fields of their own, {@code name.item}
 * @param kind {@code length}, {@code number}, {@code choice}, {@code several}, {@code order} or {@code match}
 * @param label what is asked
 * @param options what is picked from, put in order or given a partner
 * @param partners the partners of a match, or the places of an order
 * @param value as typed or picked
 * @param marks what was given to each option: its place or partner, or {@code on} where it was picked
 * @param unit the unit of a number typed without one; empty when it has none or is no number
 * @param onDrawing whether a length may be given by a tap on the drawing
 * @param reading how a length was read, or empty
 * @param error why it could not be read, or null
 */
public record BlankField(
        String name,
        String kind,
        String label,
        List<Option> options,
        List<Option> partners,
        String value,
        Map<String, String> marks,
        String unit,
        boolean onDrawing,
        String reading,
        @Nullable String error) {

    /** {@return the same field under another name, for pages that ask several problems} */
    public BlankField named(String other) {
        return new BlankField(other, kind, label, options, partners, value, marks, unit, onDrawing, reading, error);
    }

    /** {@return the mark of an option, empty when it has none} */
    public String mark(String option) {
        return marks.getOrDefault(option, "");
    }
}
