package beltmark.desk;

import beltmark.web.OperationId;
import beltmark.web.Option;
import beltmark.web.Told;
import beltmark.web.View;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Makes the pages of the desk for one visitor. */
record DeskPages(View view, LocalDate today) {

    DeskPage desk(List<Order> orders, List<Machine> machines) {
        return new DeskPage(
                view,
                orders.stream().map(this::row).toList(),
                machines.stream().map(this::row).toList());
    }

    private DeskPage.OrderRow row(Order order) {
        return new DeskPage.OrderRow(address(order), person(order), reason(order.code()), due(order));
    }

    private DeskPage.MachineRow row(Machine machine) {
        String last = machine.inspected()
                .map(day -> view.text(machine.finding() ? "desk.last-finding" : "desk.last-good", "day", day))
                .orElseGet(() -> view.text("desk.last-none"));
        String who = machine.inspected().isEmpty()
                ? ""
                : view.text("desk.who", "included", machine.included(), "inspector", machine.inspector());
        return new DeskPage.MachineRow(machine.name(), last, who, until(machine.nextBy(), machine.isOverdue(today)));
    }

    private String due(Order order) {
        return until(order.dueOn(), order.isOverdue(today));
    }

    private String until(LocalDate day, boolean overdue) {
        return view.text(overdue ? "desk.overdue" : "desk.due", "day", day);
    }

    private String person(Order order) {
        return order.person() + ", " + order.crew();
    }

    private static String address(Order order) {
        return "/desk/orders/" + order.record();
    }

    private String reason(String code) {
        return view.text("desk.reason." + code);
    }

    OrderFormPage orderForm(OrderForm form, List<Option> people, Map<String, String> faults) {
        List<Option> codes = Stream.of(ReasonCode.values())
                .map(code -> new Option(code.id(), reason(code.id())))
                .toList();
        return new OrderFormPage(view, form, people, codes, sentences(faults), OperationId.fresh());
    }

    OrderPage order(Orders.Found found, ClosingForm form, List<String> missing) {
        Order order = found.order();
        List<Told> told = new ArrayList<>(List.of(
                told("desk.reason-label", reason(order.code())),
                told("desk.what", found.reason()),
                told("desk.ordered", view.words().day(order.orderedOn())),
                told("desk.state", order.open() ? due(order) : view.text("desk.closed"))));
        told.add(told("desk.paper", proof(found.paper())));
        told.add(told("desk.demonstration", proof(found.demonstration())));
        return new OrderPage(
                view,
                view.text("desk.order-title", "person", person(order)),
                address(order) + "/close",
                told,
                order.open(),
                found.demonstration().isPresent(),
                form,
                missing.stream().map(word -> view.text("desk.missing." + word)).toList(),
                OperationId.fresh());
    }

    private Told told(String label, String value) {
        return new Told(view.text(label), value);
    }

    private String proof(Optional<Proof> proof) {
        return proof.map(one -> view.text("desk.on-record", "day", one.on(), "record", one.record()))
                .orElseGet(() -> view.text("desk.none-yet"));
    }

    InspectionFormPage inspectionForm(
            InspectionForm form, List<Machine> machines, List<Option> people, Map<String, String> faults) {
        return new InspectionFormPage(
                view,
                form,
                machines.stream()
                        .map(machine -> new Option(machine.procedure(), machine.name()))
                        .toList(),
                people,
                List.of(
                        new Option("good", view.text("desk.inspection.good")),
                        new Option("finding", view.text("desk.inspection.finding"))),
                sentences(faults),
                OperationId.fresh());
    }

    CertificationPage certification(List<Trained> trained) {
        return new CertificationPage(
                view,
                trained.stream()
                        .map(one -> new CertificationPage.Row(one.name(), days(one)))
                        .toList());
    }

    private String days(Trained one) {
        return one.days().isEmpty()
                ? view.text("desk.none-yet")
                : one.days().stream().map(view.words()::day).collect(Collectors.joining("; "));
    }

    private Map<String, String> sentences(Map<String, String> faults) {
        return faults.entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, fault -> view.text("desk.fault." + fault.getValue())));
    }
}
