package beltmark.sheet;

import beltmark.core.units.LengthReader;
import beltmark.core.units.LengthReading;
import beltmark.core.units.LengthUnit;
import beltmark.web.Form;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The form as it was typed, whatever was typed.
 *
 * @param typed the texts of the fields that are not empty
 */
public record SheetForm(Map<SheetField, String> typed) {

    public SheetForm {
        Map<SheetField, String> inOrder = new EnumMap<>(SheetField.class);
        inOrder.putAll(typed);
        inOrder.values().removeIf(String::isBlank);
        typed = Collections.unmodifiableMap(inOrder);
    }

    /** {@return the form of a request} */
    static SheetForm of(Form form) {
        Map<SheetField, String> typed = new EnumMap<>(SheetField.class);
        Stream.of(SheetField.values()).forEach(field -> typed.put(field, form.text(field.id())));
        return new SheetForm(typed);
    }

    /** {@return the form of kept fields; names that are no longer known are left out} */
    static SheetForm ofKept(Map<String, String> kept) {
        Map<SheetField, String> typed = new EnumMap<>(SheetField.class);
        kept.forEach((name, text) -> SheetField.named(name).forEach(field -> typed.put(field, text)));
        return new SheetForm(typed);
    }

    /** {@return the fields as they are kept in a record} */
    Map<String, String> kept() {
        return typed.entrySet().stream()
                .collect(Collectors.toMap(entry -> entry.getKey().id(), Map.Entry::getValue));
    }

    /** {@return what was typed, or what counts when nothing was} */
    String text(SheetField field) {
        return typed.getOrDefault(field, field.standard());
    }

    /** {@return this with the unit spelt out wherever it was left out, so that it means the same to every reader} */
    SheetForm withUnits(LengthUnit own) {
        Map<SheetField, String> spelt = new EnumMap<>(SheetField.class);
        typed.forEach((field, text) -> spelt.put(field, withUnit(field, text, own)));
        return new SheetForm(spelt);
    }

    private static String withUnit(SheetField field, String text, LengthUnit own) {
        if (field.kind() == SheetField.Kind.SPEED) {
            return SpeedReader.withUnit(text, own);
        }
        return field.kind() == SheetField.Kind.LENGTH && dependsOnReader(text) ? text + " " + own.symbol() : text;
    }

    private static boolean dependsOnReader(String text) {
        LengthReading inches = LengthReader.read(text, LengthUnit.INCH);
        LengthReading millimetres = LengthReader.read(text, LengthUnit.MILLIMETRE);
        return inches.isReadable() && !inches.getLength().equals(millimetres.getLength());
    }

    /** {@return the fields as the part of an address behind its question mark} */
    String query() {
        return typed.entrySet().stream()
                .map(entry -> entry.getKey().id() + "=" + URLEncoder.encode(entry.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
    }
}
