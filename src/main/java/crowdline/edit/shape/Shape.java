package crowdline.edit.shape;

import crowdline.show.figure.Element;
import java.util.ArrayList;
import java.util.List;

/**
 * The shape of a figure as rows: its elements, and below a line what is flown in the middle of it.
 *
 * @param elements in the order flown
 */
public record Shape(List<Element> elements) {
    /** An element flown by itself, not in the middle of a line. */
    private static final int ALONE = -1;

    public Shape {
        elements = List.copyOf(elements);
    }

    /**
     * One element.
     *
     * @param at its place in the shape, or that of the line it is in the middle of
     * @param inside its place in the middle of that line; below 0 if it is flown by itself
     */
    public record Row(int at, int inside, Element element) {
        /** The row of the line it is in the middle of, or itself; the place counts alone. */
        public Row ofLine() {
            return new Row(at, ALONE, element);
        }

        /** Such as "pull 180°, 4 g". */
        public String words() {
            return (inside == ALONE ? "" : "   in the middle: ") + ElementText.of(element);
        }
    }

    /** All of it, in the order flown. */
    public List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (int at = 0; at < elements.size(); at++) {
            rows.add(new Row(at, ALONE, elements.get(at)));
            if (elements.get(at) instanceof Element.Line line) {
                for (int inside = 0; inside < line.middle().size(); inside++) {
                    rows.add(new Row(at, inside, line.middle().get(inside)));
                }
            }
        }
        return rows;
    }

    /** The same with another element in a row. */
    public Shape with(Row row, Element other) {
        return changed(row, list -> list.set(place(row), other));
    }

    /** The same with one more behind a row. */
    public Shape after(Row row, Element fresh) {
        return changed(row, list -> list.add(place(row) + 1, fresh));
    }

    /** The same with one at the beginning. */
    public Shape begun(Element fresh) {
        List<Element> all = new ArrayList<>(elements);
        all.add(0, fresh);
        return new Shape(all);
    }

    /** The same without a row. */
    public Shape without(Row row) {
        return changed(row, list -> list.remove(place(row)));
    }

    /**
     * The same with a row moved.
     *
     * @param by places later, negative for earlier, as far as there are any
     */
    public Shape moved(Row row, int by) {
        return changed(row, list -> {
            Element element = list.remove(place(row));
            list.add(Math.max(0, Math.min(list.size(), place(row) + by)), element);
        });
    }

    private interface Changing {
        void in(List<Element> list);
    }

    private static int place(Row row) {
        return row.inside() == ALONE ? row.at() : row.inside();
    }

    private Shape changed(Row row, Changing changing) {
        List<Element> all = new ArrayList<>(elements);
        if (row.inside() == ALONE) {
            changing.in(all);
        } else if (all.get(row.at()) instanceof Element.Line line) {
            List<Element> middle = new ArrayList<>(line.middle());
            changing.in(middle);
            all.set(row.at(), new Element.Line(line.until(), line.value(), middle, line.power()));
        }
        return new Shape(all);
    }
}
