package beltmark.core.statistics;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;

/** Why a person should look at an item again; a flag is a question, not a verdict. The limits are our own proposal. */
public enum ItemFlag {
    /** It works against the rest of the test, as it does when the key is wrong. */
    SUSPECT_KEY,
    /** Those who do well on the rest hardly do better here. */
    WEAK,
    /** Fewer than three in ten have it right. */
    HARD,
    /** Everyone has it right, so that it tells nobody apart; keep it if it is critical. */
    EVERYONE_PASSES;

    /** The smallest group whose correlations, consistency and flags that rest on them are shown: below, they are noise. */
    public static final int SMALLEST_FOR_CORRELATION = 30;

    private static final int SMALLEST_FOR_EVERYONE = 20;
    private static final double HARD_BELOW = 0.30;
    private static final double WEAK_BELOW = 0.10;

    /** {@return the name in files and text keys} */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * The flags of an item. It is hard with p below .30, from 10 people; weak with a corrected r below .10, from 30
     * people; its key is suspect with a corrected r below 0, from 30 people, if another option than the key was chosen
     * most or if even the upper 95 % limit of r is below .10; everyone passes with p = 1 for 20 people or more.
     *
     * @param item how it did
     * @param anotherOptionLeads whether an option that is not the key was chosen most; false where options are not known
     */
    public static Set<ItemFlag> of(ItemStatistics item, boolean anotherOptionLeads) {
        EnumSet<ItemFlag> flags = EnumSet.noneOf(ItemFlag.class);
        long people = item.hits().trials();
        if (people >= SMALLEST_FOR_CORRELATION) {
            item.correctedR().toOptional().ifPresent(r -> addByCorrelation(flags, r, people, anotherOptionLeads));
        }
        if (item.hits().isLargeEnough() && item.share().toOptional().orElseThrow() < HARD_BELOW) {
            flags.add(HARD);
        }
        if (people >= SMALLEST_FOR_EVERYONE && item.hits().hits() == people) {
            flags.add(EVERYONE_PASSES);
        }
        return flags;
    }

    private static void addByCorrelation(Set<ItemFlag> flags, double r, long people, boolean anotherOptionLeads) {
        if (r < 0 && (anotherOptionLeads || Bounds.ofCorrelation(r, people).high() < WEAK_BELOW)) {
            flags.add(SUSPECT_KEY);
        } else if (r < WEAK_BELOW) {
            flags.add(WEAK);
        }
    }
}
