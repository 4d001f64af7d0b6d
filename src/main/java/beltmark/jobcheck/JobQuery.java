package beltmark.jobcheck;

import beltmark.content.Content;
import beltmark.core.crew.Place;
import beltmark.core.qualification.QualificationRule;
import beltmark.core.setup.HardwareCard;
import beltmark.qualification.AsOf;
import beltmark.web.Form;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What is asked of the job check. Everything is in the address, so that a link shows the same to whoever may see it.
 *
 * @param asOf the day of the job; a past one is answered by what was known then
 * @param card the id of the hardware card, empty as long as none is chosen
 * @param crew the number of a crew as it stands in the address, empty for all
 * @param places how many people of which qualification, those for the card first
 */
public record JobQuery(AsOf asOf, String card, String crew, List<Place> places) {

    /** The most people of one qualification that can be asked for. */
    static final int MOST = 20;

    private static final int USUAL_FITTERS = 2;
    private static final String FITTERS = "fitters";
    private static final String ALSO = "also-";

    public JobQuery {
        places = List.copyOf(places);
    }

    /** {@return what an address asks; without a card chosen, the usual numbers} */
    static JobQuery of(Form address, Content content, LocalDate today) {
        AsOf asOf = new AsOf(AsOf.day(address.text("on"), today), today, false);
        String card = address.text("card");
        List<QualificationRule> rules = content.rules().listValid(asOf.on());
        List<Place> places = new ArrayList<>();
        for (QualificationRule rule : rules) {
            if (rule.card().filter(card::equals).isPresent()) {
                places.add(0, new Place(rule.id(), count(address, FITTERS, USUAL_FITTERS)));
            } else if (rule.card().isEmpty()) {
                places.add(new Place(rule.id(), count(address, ALSO + rule.id(), 1)));
            }
        }
        boolean known = content.cards().stream().map(HardwareCard::id).anyMatch(card::equals);
        return new JobQuery(asOf, known ? card : "", address.text("crew"), places);
    }

    private static int count(Form address, String field, int usual) {
        return (int) Math.min(address.number(field).orElse(usual), MOST);
    }

    /** {@return whether a card is chosen, so that there is something to answer} */
    public boolean isAsked() {
        return !card.isEmpty();
    }

    /** {@return the places that take nobody of the card: for a form before a card is chosen, all of them} */
    List<Place> others() {
        return isAsked() && !places.isEmpty() ? places.subList(1, places.size()) : places;
    }

    /** {@return how many are to be qualified on the card} */
    int fitters() {
        return isAsked() && !places.isEmpty() ? places.get(0).count() : USUAL_FITTERS;
    }

    /** {@return the name of the field of another qualification} */
    static String field(Place place) {
        return ALSO + place.qualification();
    }

    /** {@return the address that asks the same} */
    String path(String base) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("on", asOf.on().toString());
        fields.put("card", card);
        fields.put(FITTERS, Integer.toString(fitters()));
        others().forEach(place -> fields.put(field(place), Integer.toString(place.count())));
        fields.put("crew", crew);
        return base
                + fields.entrySet().stream()
                        .filter(field -> !field.getValue().isEmpty())
                        .map(field ->
                                field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                        .collect(Collectors.joining("&", "?", ""));
    }
}
