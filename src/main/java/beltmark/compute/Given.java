package beltmark.compute;

import beltmark.core.units.Angle;
import beltmark.core.units.Force;
import beltmark.core.units.Length;
import beltmark.core.units.LineLoad;
import beltmark.core.units.Mass;
import beltmark.core.units.PreciseLength;
import beltmark.core.units.Pressure;
import beltmark.core.units.Quantity;
import beltmark.core.units.Ratio;
import beltmark.core.units.Speed;
import beltmark.core.units.SpringRate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What was given for a quantity, read and in the types of the core, by the name of the field without unit. */
record Given(Map<String, Object> values) {

    boolean has(String name) {
        return values.containsKey(name);
    }

    /** The value of a field that must be there for this way of saying it. */
    <T> T get(String name, Class<T> type) {
        Object value = values.get(name);
        if (value == null) {
            throw new LineRefused(LineFault.MISSING_FIELD).with("field", name);
        }
        return type.cast(value);
    }

    <T> T get(String name, T usual) {
        @Nullable Object value = values.get(name);
        return value == null ? usual : type(usual).cast(value);
    }

    @SuppressWarnings("unchecked")
    private static <T> Class<T> type(T value) {
        return (Class<T>) value.getClass();
    }

    Length length(String name) {
        return get(name, Length.class);
    }

    /** A length that is nought when it is not given. */
    Length lengthOrZero(String name) {
        return get(name, Length.ZERO);
    }

    Force force(String name) {
        return get(name, Force.class);
    }

    SpringRate rate() {
        return get("rate", SpringRate.class);
    }

    LineLoad lineLoad(String name) {
        return get(name, LineLoad.class);
    }

    Pressure pressure(String name) {
        return get(name, Pressure.class);
    }

    Mass mass(String name) {
        return get(name, Mass.class);
    }

    Angle angleOrZero(String name) {
        return get(name, Angle.ZERO);
    }

    Speed speed(String name) {
        return get(name, Speed.class);
    }

    Ratio ratio(String name) {
        return get(name, Ratio.class);
    }

    double number(String name) {
        return ratio(name).value();
    }

    double number(String name, double usual) {
        return get(name, new Ratio(usual)).value();
    }

    boolean flag(String name) {
        return get(name, Boolean.FALSE);
    }

    String text(String name) {
        return get(name, String.class);
    }

    String text(String name, String usual) {
        return get(name, usual);
    }

    /** Whatever quantity the field holds. */
    <Q extends Quantity> Q quantity(String name, Class<Q> type) {
        return get(name, type);
    }

    List<Double> numbers(String name) {
        return ((List<?>) get(name, List.class))
                .stream().map(Double.class::cast).toList();
    }

    List<PreciseLength> lengths(String name) {
        return ((List<?>) get(name, List.class))
                .stream().map(PreciseLength.class::cast).toList();
    }

    /** Pairs of a low and a high length; none when not given. */
    List<Length[]> reaches(String name) {
        List<?> pairs = has(name) ? get(name, List.class) : List.of();
        return pairs.stream().map(Length[].class::cast).toList();
    }
}
