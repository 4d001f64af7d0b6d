package beltmark.core.problem;

import beltmark.core.units.Length;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What a person answered to one blank, once it could be read. */
public sealed interface Answer {

    /**
     * A length, typed or marked on a drawing.
     *
     * @param length as read, exact
     */
    record OfLength(Length length) implements Answer {}

    /**
     * A number.
     *
     * @param amount in the unit of its blank
     */
    record OfNumber(double amount) implements Answer {}

    /**
     * One of the options.
     *
     * @param option the option's id
     */
    record OfChoice(String option) implements Answer {}

    /**
     * Several of the options.
     *
     * @param options their ids
     */
    record OfSeveral(Set<String> options) implements Answer {

        public OfSeveral {
            options = Set.copyOf(options);
        }
    }

    /**
     * All items in an order.
     *
     * @param items their ids, first to last
     */
    record OfOrder(List<String> items) implements Answer {

        public OfOrder {
            items = List.copyOf(items);
        }
    }

    /**
     * A partner for each thing.
     *
     * @param partners the id of the partner by the id of the thing
     */
    record OfMatch(Map<String, String> partners) implements Answer {

        public OfMatch {
            partners = Map.copyOf(partners);
        }
    }
}
