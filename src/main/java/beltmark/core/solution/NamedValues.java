package beltmark.core.solution;

import beltmark.core.units.Quantity;
import java.util.AbstractMap;
import java.util.AbstractSet;
import java.util.Arrays;
import java.util.Iterator;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A few values by name in reading order; never changes. A set-up sheet makes hundreds of them, so it holds two short
 * arrays in place of a hash table.
 */
final class NamedValues extends AbstractMap<String, Quantity> {

    static final NamedValues NONE = new NamedValues(new String[0], new Quantity[0]);

    private final String[] names;
    private final Quantity[] quantities;

    private NamedValues(String[] names, Quantity[] quantities) {
        this.names = names;
        this.quantities = quantities;
    }

    static NamedValues copyOf(Map<String, Quantity> values) {
        if (values instanceof NamedValues own) {
            return own;
        }
        NamedValues copy = NONE;
        for (Map.Entry<String, Quantity> entry : values.entrySet()) {
            copy = copy.plus(entry.getKey(), entry.getValue());
        }
        return copy;
    }

    /** These and one more at the end; a name that is there already gets the new value in its old place. */
    NamedValues plus(String name, Quantity quantity) {
        int at = indexOf(name);
        int length = at < 0 ? names.length + 1 : names.length;
        String[] moreNames = Arrays.copyOf(names, length);
        Quantity[] moreQuantities = Arrays.copyOf(quantities, length);
        moreNames[at < 0 ? length - 1 : at] = name;
        moreQuantities[at < 0 ? length - 1 : at] = quantity;
        return new NamedValues(moreNames, moreQuantities);
    }

    private int indexOf(@Nullable Object name) {
        for (int i = 0; i < names.length; i++) {
            if (names[i].equals(name)) {
                return i;
            }
        }
        return -1;
    }

    @Override
    public @Nullable Quantity get(@Nullable Object name) {
        int at = indexOf(name);
        return at < 0 ? null : quantities[at];
    }

    @Override
    public boolean containsKey(@Nullable Object name) {
        return indexOf(name) >= 0;
    }

    @Override
    public Set<Map.Entry<String, Quantity>> entrySet() {
        return new Entries();
    }

    private final class Entries extends AbstractSet<Map.Entry<String, Quantity>> {

        @Override
        public int size() {
            return names.length;
        }

        @Override
        public Iterator<Map.Entry<String, Quantity>> iterator() {
            return new Iterator<>() {
                private int next;

                @Override
                public boolean hasNext() {
                    return next < names.length;
                }

                @Override
                public Map.Entry<String, Quantity> next() {
                    if (!hasNext()) {
                        throw new NoSuchElementException();
                    }
                    return Map.entry(names[next], quantities[next++]);
                }
            };
        }
    }
}
