package beltmark.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Hatching of a rectangle with thin lines at 45 degrees, as sections are hatched (ISO 128, weights from memory). The
 * lines are worked out here and not left to an SVG pattern, because a pattern needs an id that may clash on a page.
 *
 * @param lines from one edge of the rectangle to another
 */
public record Hatch(List<Line> lines) implements Shape {

    public Hatch {
        lines = List.copyOf(lines);
    }

    /** {@return lines that rise to the right, that far apart when measured along an edge} */
    public static Hatch rising(Box box, double apart) {
        List<Line> lines = new ArrayList<>();
        double left = box.corner().x();
        double top = box.corner().y();
        for (double along = apart / 2; along < box.width() + box.height(); along += apart) {
            double start = Math.max(0, along - box.height());
            double end = Math.min(box.width(), along);
            lines.add(Line.of(left + start, top + along - start, left + end, top + along - end, Style.HATCH));
        }
        return new Hatch(lines);
    }

    /** {@return lines that fall to the right, that far apart when measured along an edge} */
    public static Hatch falling(Box box, double apart) {
        double axis = box.corner().x() + box.right();
        return new Hatch(rising(box, apart).lines.stream()
                .map(line -> Line.of(
                        axis - line.from().x(),
                        line.from().y(),
                        axis - line.to().x(),
                        line.to().y(),
                        Style.HATCH))
                .toList());
    }

    /** {@return all lines as the data of one SVG path} */
    public String svgPath() {
        StringBuilder path = new StringBuilder();
        for (Line line : lines) {
            path.append('M')
                    .append(line.from().x())
                    .append(' ')
                    .append(line.from().y());
            path.append('L').append(line.to().x()).append(' ').append(line.to().y());
        }
        return path.toString();
    }
}
