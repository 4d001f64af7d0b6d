package beltmark.board;

import beltmark.web.Form;
import beltmark.web.Html;
import beltmark.web.NotFound;
import beltmark.web.Role;
import beltmark.web.Views;
import io.javalin.http.Context;
import io.javalin.router.JavalinDefaultRoutingApi;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The addresses of the crew board, of one person's record, and of the records behind a cell. */
public final class BoardRoutes {

    private final Board board;
    private final Views views;
    private final Html html;

    public BoardRoutes(Board board, Views views, Html html) {
        this.board = board;
        this.views = views;
        this.html = html;
    }

    /** Adds the routes; one's own record is open to everybody who is signed in. */
    public void register(JavalinDefaultRoutingApi routes) {
        routes.get("/board", this::show, Role.SUPERVISOR, Role.COORDINATOR, Role.ADMIN);
        routes.get("/board/me", this::ownRecord, Role.SIGNED_IN);
        routes.get("/board/me/{column}", this::ownEvidence, Role.SIGNED_IN);
        routes.get("/board/{person}", this::record, Role.SUPERVISOR, Role.COORDINATOR, Role.ADMIN);
        routes.get("/board/{person}/{column}", this::evidence, Role.SUPERVISOR, Role.COORDINATOR, Role.ADMIN);
    }

    private void show(Context ctx) {
        List<Crew> crews = board.listCrews(views.visitor(ctx));
        Crew crew = crew(ctx.queryParam("crew"), crews);
        Board.Sheet sheet = board.sheet(views.visitor(ctx), crew == null ? BoardStore.ALL : crew.id());
        html.show(ctx, pages(ctx).board(sheet, crews, crew));
    }

    private static @Nullable Crew crew(@Nullable String asked, List<Crew> crews) {
        if (asked == null || asked.isEmpty() || crews.isEmpty()) {
            return null;
        }
        return crews.stream()
                .filter(crew -> Long.toString(crew.id()).equals(asked))
                .findFirst()
                .orElseThrow(() -> new NotFound("no crew"));
    }

    private void ownRecord(Context ctx) {
        html.show(ctx, pages(ctx).record(self(ctx), true));
    }

    private void record(Context ctx) {
        html.show(ctx, pages(ctx).record(member(ctx), false));
    }

    private void ownEvidence(Context ctx) {
        html.show(ctx, pages(ctx).evidence(self(ctx), true, board.getColumn(ctx.pathParam("column"))));
    }

    private void evidence(Context ctx) {
        html.show(ctx, pages(ctx).evidence(member(ctx), false, board.getColumn(ctx.pathParam("column"))));
    }

    private Member self(Context ctx) {
        return board.getMember(views.visitor(ctx), views.visitor(ctx).personId());
    }

    private Member member(Context ctx) {
        return board.getMember(views.visitor(ctx), Form.pathNumber(ctx, "person"));
    }

    private BoardPages pages(Context ctx) {
        return new BoardPages(views.of(ctx), board);
    }
}
