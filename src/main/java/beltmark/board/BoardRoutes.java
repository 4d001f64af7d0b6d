package beltmark.board;

import beltmark.qualification.AsOf;
import beltmark.web.Download;
import beltmark.web.Form;
import beltmark.web.Html;
import beltmark.web.NotFound;
import beltmark.web.Role;
import beltmark.web.Views;
import io.javalin.http.Context;
import io.javalin.router.JavalinDefaultRoutingApi;
import java.util.List;

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
        routes.get("/board.csv", this::export, Role.SUPERVISOR, Role.COORDINATOR, Role.ADMIN);
        routes.get("/board/me", this::ownRecord, Role.SIGNED_IN);
        routes.get("/board/me/{column}", this::ownEvidence, Role.SIGNED_IN);
        routes.get("/board/{person}", this::record, Role.SUPERVISOR, Role.COORDINATOR, Role.ADMIN);
        routes.get("/board/{person}/{column}", this::evidence, Role.SUPERVISOR, Role.COORDINATOR, Role.ADMIN);
    }

    private void show(Context ctx) {
        List<Crew> crews = board.listCrews(views.visitor(ctx));
        BoardQuery query = query(ctx, crews);
        html.show(ctx, pages(ctx).board(board.sheet(views.visitor(ctx), query), crews, query));
    }

    private void export(Context ctx) {
        BoardQuery query = query(ctx, board.listCrews(views.visitor(ctx)));
        String file = new BoardCsv(
                        views.of(ctx).words(),
                        board.listRules(query),
                        query.asOf().on())
                .write(board.mapJudges(views.visitor(ctx), query));
        Download.csv(ctx, "crew-board-" + query.asOf().on(), file);
    }

    private BoardQuery query(Context ctx, List<Crew> crews) {
        BoardQuery query = BoardQuery.of(Form.ofAddress(ctx), board.today());
        boolean knowsCrew = query.crew().isEmpty()
                || crews.isEmpty()
                || crews.stream().anyMatch(crew -> Long.toString(crew.id()).equals(query.crew()));
        boolean knowsCard =
                query.card().isEmpty() || board.content().findCard(query.card()).isPresent();
        if (!knowsCrew || !knowsCard) {
            throw new NotFound("no crew or card");
        }
        return query;
    }

    private void ownRecord(Context ctx) {
        html.show(ctx, pages(ctx).record(self(ctx), true));
    }

    private void record(Context ctx) {
        html.show(ctx, pages(ctx).record(member(ctx), false));
    }

    private void ownEvidence(Context ctx) {
        html.show(ctx, pages(ctx).evidence(self(ctx), true, column(ctx)));
    }

    private void evidence(Context ctx) {
        html.show(ctx, pages(ctx).evidence(member(ctx), false, column(ctx)));
    }

    private Column column(Context ctx) {
        return board.getColumn(ctx.pathParam("column"), asOf(ctx).on());
    }

    private Member self(Context ctx) {
        return board.getMember(views.visitor(ctx), views.visitor(ctx).personId());
    }

    private Member member(Context ctx) {
        return board.getMember(views.visitor(ctx), Form.pathNumber(ctx, "person"));
    }

    private AsOf asOf(Context ctx) {
        return AsOf.of(Form.ofAddress(ctx), board.today());
    }

    private BoardPages pages(Context ctx) {
        return new BoardPages(views.of(ctx), board, asOf(ctx));
    }
}
