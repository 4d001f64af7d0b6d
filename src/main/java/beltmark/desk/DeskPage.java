package beltmark.desk;

import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;

/**
 * What lies on the coordinator's desk.
 *
 * @param view what all pages share
 * @param orders the open orders
 * @param machines the machines with a written procedure
 */
public record DeskPage(View view, List<OrderRow> orders, List<MachineRow> machines) implements Page {

    /**
     * An open order.
     *
     * @param address where it is
     * @param person who, with the crew
     * @param why the reason
     * @param due the last day, with a sign and a word when it has passed
     */
    public record OrderRow(String address, String person, String why, String due) {}

    /**
     * A machine.
     *
     * @param machine its name
     * @param last the last inspection: day, result
     * @param who the employees included and the inspector
     * @param next the last day for the next one, with a sign and a word when it has passed
     */
    public record MachineRow(String machine, String last, String who, String next) {}
}
