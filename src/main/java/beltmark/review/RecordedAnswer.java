package beltmark.review;

import java.util.List;

/**
 * What the review needs of the body of a record {@code lockout.answer}: the question as it was shown, so that it reads
 * the same when the quiz has long changed.
 *
 * @param number its number in the sitting
 * @param kind what was asked to be done with the options
 * @param critical whether it was critical
 * @param ask the question as shown
 * @param options the options as shown
 * @param chosen the ids chosen, or all in the order given
 * @param right the ids of the key
 * @param judgement right or wrong
 * @param source the paragraph
 */
record RecordedAnswer(
        int number,
        String kind,
        boolean critical,
        String ask,
        List<Shown> options,
        List<String> chosen,
        List<String> right,
        String judgement,
        String source) {

    RecordedAnswer {
        options = List.copyOf(options);
        chosen = List.copyOf(chosen);
        right = List.copyOf(right);
    }

    /** {@return whether an order was asked for} */
    boolean isOrder() {
        return kind.equals("put-in-order");
    }

    /** {@return the texts of these options; in the order of the ids where an order was asked for, else as shown} */
    List<String> texts(List<String> ids) {
        return isOrder()
                ? ids.stream().map(this::text).toList()
                : options.stream()
                        .filter(option -> ids.contains(option.id()))
                        .map(Shown::text)
                        .toList();
    }

    private String text(String id) {
        return options.stream()
                .filter(option -> option.id().equals(id))
                .map(Shown::text)
                .findFirst()
                .orElse(id);
    }

    /**
     * An option as it was shown.
     *
     * @param id its id
     * @param text its text
     */
    record Shown(String id, String text) {}
}
