package beltmark.bank;

import java.util.List;

/**
 * Body of the record {@code lockout.rules-chosen}.
 *
 * @param ruleSets the ids of the rule sets the site works under from now on
 */
record RulesChosen(List<String> ruleSets) {

    RulesChosen {
        ruleSets = List.copyOf(ruleSets);
    }
}
