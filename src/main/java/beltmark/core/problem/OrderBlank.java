package beltmark.core.problem;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;

/**
 * All items are to be put in order.
 *
 * @param id the name within its part
 * @param items the items' ids in the order shown, at least three
 * @param rightOrder the items in the right order
 * @param slips a known wrong order, by the slip's id
 * @param swapSlips the slip behind one item that was put before its turn, by item; told when the others follow in order
 */
public record OrderBlank(
        String id,
        List<String> items,
        List<String> rightOrder,
        Map<String, List<String>> slips,
        Map<String, String> swapSlips)
        implements Blank {

    public OrderBlank {
        items = List.copyOf(items);
        rightOrder = List.copyOf(rightOrder);
        slips = Map.copyOf(slips);
        swapSlips = Map.copyOf(swapSlips);
    }

    @Override
    public Answer right() {
        return new Answer.OfOrder(rightOrder);
    }

    @Override
    public List<WrongAnswer> wrongAnswers() {
        ArrayList<WrongAnswer> wrong = new ArrayList<>();
        slips.forEach((slip, order) -> wrong.add(new WrongAnswer(slip, new Answer.OfOrder(order))));
        for (String item : rightOrder) {
            String slip = swapSlips.get(item);
            int place = rightOrder.indexOf(item);
            if (slip != null && place > 0) {
                ArrayList<String> order = new ArrayList<>(rightOrder);
                order.remove(place);
                order.add(place - 1, item);
                wrong.add(new WrongAnswer(slip, new Answer.OfOrder(order)));
            }
        }
        return wrong;
    }

    @Override
    public boolean isFair() {
        return items.size() >= 3
                && rightOrder.size() == items.size()
                && new HashSet<>(rightOrder).equals(new HashSet<>(items))
                && Blank.areDistinct(right(), wrongAnswers());
    }

    @Override
    public double guess() {
        double ways = 1;
        for (int i = 2; i <= items.size(); i++) {
            ways *= i;
        }
        return 1 / ways;
    }
}
