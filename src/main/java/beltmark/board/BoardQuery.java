package beltmark.board;

import beltmark.core.qualification.Status;
import beltmark.qualification.AsOf;
import beltmark.web.Form;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What is asked of the board.
 *
 * @param crew the number of a crew as it stands in the address, empty for all
 * @param card the id of a hardware card, empty for all
 * @param status the id of a status, empty for any
 * @param asOf the day, and as known when
 * @param page the page, from 1
 */
public record BoardQuery(String crew, String card, String status, AsOf asOf, int page) {

    private static final int MOST_PAGES = 10_000;

    static BoardQuery of(Form address, LocalDate today) {
        long page = address.number("page").orElse(1);
        String status = address.text("status");
        boolean known = Stream.of(Status.values()).anyMatch(one -> one.id().equals(status));
        return new BoardQuery(
                address.text("crew"), address.text("card"), known ? status : "", AsOf.of(address, today), (int)
                        Math.max(1, Math.min(page, MOST_PAGES)));
    }

    /** {@return the address of the same board, another page of it} */
    String path(String base, int other) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("crew", crew);
        fields.put("card", card);
        fields.put("status", status);
        fields.put("on", asOf.isOtherDay() ? asOf.on().toString() : "");
        fields.put("known", asOf.isPast() && asOf.byNow() ? "now" : "");
        fields.put("page", other == 1 ? "" : Integer.toString(other));
        String query = fields.entrySet().stream()
                .filter(field -> !field.getValue().isEmpty())
                .map(field -> field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        return query.isEmpty() ? base : base + "?" + query;
    }
}
