package beltmark.people;

import beltmark.content.ContentFile;
import beltmark.core.units.Graduation;
import beltmark.db.Database;
import beltmark.people.PinStore.StoredPin;
import beltmark.texts.Language;
import beltmark.web.Role;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;

/**
 * The invented people of the demo, as the file {@code demo-data/people.yaml} has them.
 *
 * @param pin the PIN of each of them
 * @param crews their crews
 */
public record DemoPeople(String pin, List<DemoCrew> crews) {

    private static final ObjectReader READER = new YAMLMapper(YAMLFactory.builder()
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .build())
            .readerFor(DemoPeople.class);

    public DemoPeople {
        crews = List.copyOf(crews);
    }

    /**
     * A crew of the demo.
     *
     * @param name as it is shown
     * @param people who is in it
     */
    public record DemoCrew(String name, List<DemoPerson> people) {
        public DemoCrew {
            people = List.copyOf(people);
        }
    }

    /**
     * A person of the demo.
     *
     * @param name as it is shown
     * @param roles words of {@link Role}
     * @param length how lengths are shown: a {@link Graduation} in small letters with hyphens
     */
    public record DemoPerson(String name, List<String> roles, String length) {
        public DemoPerson {
            roles = List.copyOf(roles);
        }

        private Newcomer toNewcomer() {
            return new Newcomer(
                    name,
                    roles.stream().map(Role::of).collect(Collectors.toSet()),
                    Language.EN,
                    Graduation.valueOf(length.toUpperCase(Locale.ROOT).replace('-', '_')));
        }
    }

    /** {@return what the file shipped with the program says} */
    public static DemoPeople read() {
        ContentFile file = ContentFile.list("demo-data").stream()
                .filter(shipped -> shipped.name().equals("people.yaml"))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("demo-data/people.yaml is not in the program"));
        try {
            return READER.readValue(file.text());
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(file.path() + ": " + e.getMessage(), e);
        }
    }

    /** {@return whether these people were put into the database; one that has people is left as it is} */
    public boolean addTo(Database database, Pins pins) {
        PersonStore people = new PersonStore();
        if (!database.read(people::listCrews).isEmpty()) {
            return false;
        }
        // one hash for all: they have the same PIN, and it is printed
        StoredPin stored = pins.hash(pin, false).join();
        database.write(handle -> {
                    crews.forEach(crew -> add(handle, crew, new Joining(pins), stored));
                    return crews.size();
                })
                .join();
        return true;
    }

    private static void add(Handle handle, DemoCrew crew, Joining joining, StoredPin stored) {
        long crewId = new PersonStore().addCrew(handle, crew.name(), true);
        for (DemoPerson person : crew.people()) {
            joining.join(handle, person.toNewcomer(), crewId, Membership.SINCE_EVER, stored);
        }
    }
}
