package beltmark.people;

import beltmark.people.PeoplePage.CrewRows;
import beltmark.people.PeoplePage.Row;
import beltmark.web.Form;
import beltmark.web.Html;
import beltmark.web.OperationId;
import beltmark.web.Role;
import beltmark.web.Views;
import beltmark.web.Visitor;
import io.javalin.http.Context;
import io.javalin.router.JavalinDefaultRoutingApi;
import java.util.List;

/** The people a supervisor or an admin looks after, and new PINs for them. */
public final class PeopleRoutes {

    private final People people;
    private final Views views;
    private final Html html;

    public PeopleRoutes(People people, Views views, Html html) {
        this.people = people;
        this.views = views;
        this.html = html;
    }

    /** Adds the routes. */
    public void register(JavalinDefaultRoutingApi routes) {
        routes.get("/people", this::show, Role.SUPERVISOR, Role.ADMIN);
        routes.post("/people/{person}/reset-pin", this::resetPin, Role.SUPERVISOR, Role.ADMIN);
    }

    private void show(Context ctx) {
        Visitor visitor = views.visitor(ctx);
        List<Person> all = people.listFor(visitor);
        List<CrewRows> crews = people.listCrews().stream()
                .map(crew -> new CrewRows(crew.name(), rows(visitor, crew, all)))
                .filter(crew -> !crew.people().isEmpty())
                .toList();
        html.show(ctx, new PeoplePage(views.of(ctx), crews));
    }

    private static List<Row> rows(Visitor visitor, Crew crew, List<Person> all) {
        return all.stream()
                .filter(person -> person.crewId() == crew.id())
                .map(person -> new Row(person, People.mayReset(visitor, person), OperationId.fresh()))
                .toList();
    }

    private void resetPin(Context ctx) {
        long person = Form.pathNumber(ctx, "person");
        OperationId operation = Form.of(ctx).operation();
        ctx.future(() -> people.resetPin(views.visitor(ctx), person, operation)
                .thenAccept(reset -> html.show(ctx, new ResetPage(views.of(ctx), reset.person(), reset.pin()))));
    }
}
