package beltmark.recordbook;

import beltmark.core.units.Length;
import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import com.fasterxml.jackson.annotation.PropertyAccessor;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.deser.std.StdDelegatingDeserializer;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdDelegatingSerializer;
import com.fasterxml.jackson.databind.type.TypeFactory;
import com.fasterxml.jackson.databind.util.StdConverter;
import java.time.Instant;
import java.time.LocalDate;
import java.util.function.Function;

/**
 * Bodies as JSON, so that equal records give equal text: the components in alphabetical order without spaces, a
 * {@link Length} as {@code {"nm":120650000}} (the unit stays with the number), times and dates as ISO 8601 text.
 */
final class Json {

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .addModule(ourTypes())
            .enable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
            .enable(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS)
            // NaN and infinity stay bare, so that the database refuses them
            .disable(JsonWriteFeature.WRITE_NAN_AS_STRINGS)
            // records may say things about themselves (isReadable); only their components are kept
            .visibility(PropertyAccessor.ALL, Visibility.NONE)
            .visibility(PropertyAccessor.FIELD, Visibility.ANY)
            .visibility(PropertyAccessor.CREATOR, Visibility.ANY)
            // an old record stays readable when a component is dropped later
            .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .build();

    private Json() {}

    static String write(Object body) {
        try {
            return MAPPER.writeValueAsString(body);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(body.getClass() + " cannot be kept as JSON", e);
        }
    }

    static <T> T read(String json, Class<T> type) {
        try {
            return MAPPER.readValue(json, type);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("not a " + type.getSimpleName() + ": " + json, e);
        }
    }

    private static SimpleModule ourTypes() {
        SimpleModule module = new SimpleModule();
        add(
                module,
                Length.class,
                length -> new Nanometres(length.nanometres()),
                Nanometres.class,
                Nanometres::toLength);
        add(module, Instant.class, Instant::toString, String.class, Instant::parse);
        add(module, LocalDate.class, LocalDate::toString, String.class, LocalDate::parse);
        return module;
    }

    private static <T, J> void add(
            SimpleModule module, Class<T> type, Function<T, J> write, Class<J> json, Function<J, T> read) {
        module.addSerializer(type, new StdDelegatingSerializer(type, new Conversion<>(type, write, json)));
        module.addDeserializer(type, new StdDelegatingDeserializer<>(new Conversion<>(json, read, type)));
    }

    private record Nanometres(long nm) {

        Length toLength() {
            return Length.ofNanometres(nm);
        }
    }

    /** A conversion that can name its types; Jackson cannot see those of a lambda. */
    private static final class Conversion<A, B> extends StdConverter<A, B> {

        private final Class<A> from;
        private final Function<A, B> function;
        private final Class<B> to;

        Conversion(Class<A> from, Function<A, B> function, Class<B> to) {
            this.from = from;
            this.function = function;
            this.to = to;
        }

        @Override
        public B convert(A value) {
            return function.apply(value);
        }

        @Override
        public JavaType getInputType(TypeFactory types) {
            return types.constructType(from);
        }

        @Override
        public JavaType getOutputType(TypeFactory types) {
            return types.constructType(to);
        }
    }
}
