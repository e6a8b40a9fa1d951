package crowdline.console.walk;

import crowdline.console.paint.Box;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.walk.WalkView.Bar;
import crowdline.console.walk.WalkView.Segment;
import crowdline.console.walk.WalkView.Stretch;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Path2D;
import java.util.List;
import java.util.function.DoubleConsumer;

/** Paints the whole act as a line: its figures, what is said above them, and where the walk is. The mouse moves it. */
final class TimeBar extends Painted<Bar> {
    private static final double INSET_PX = 20;
    /** Narrower than this many letters a figure has no room for its name. */
    private static final double LETTERS = 4;

    /** How high a way is, of the height of a figure. Tuned by looking. */
    private static final double WAY_HEIGHT = 0.24;

    /** How far names grow with the zoom. Tuned by looking. */
    private static final double MOST_GROWTH = 1.4;

    private final transient DoubleConsumer pointed;

    TimeBar(Appearance appearance, DoubleConsumer pointed) {
        super("The act as a line", appearance);
        this.pointed = pointed;
        MouseAdapter mouse = new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                point(event);
            }

            @Override
            public void mouseDragged(MouseEvent event) {
                point(event);
            }
        };
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
    }

    private void point(MouseEvent event) {
        double inset = INSET_PX * scale();
        double width = getWidth() - 2 * inset;
        if (width > 0) {
            pointed.accept(Math.max(0, Math.min(1, (event.getX() - inset) / width)));
        }
    }

    private double scale() {
        return Math.max(0.4, getWidth() / 1280.0);
    }

    @Override
    protected String spoken(Bar v) {
        return v.figures().stream()
                .filter(Segment::current)
                .findFirst()
                .map(f -> "At " + f.name())
                .orElse("Before the first figure");
    }

    @Override
    protected void paint(Pen pen, Bar v, Box box) {
        Box inner = box.inset(INSET_PX * scale(), pen.px(8));
        Box talk = inner.top(inner.h() * 0.2);
        for (Stretch remark : v.remarks()) {
            Box piece = part(talk, remark.from(), remark.to());
            pen.fill(
                    piece, remark.now() ? pen.palette().accent() : pen.palette().path());
        }
        Box figures = inner.belowTop(inner.h() * 0.26);
        v.figures().forEach(figure -> box(pen, figure, places(figures, figure)));
        for (int i = 0; i < v.figures().size(); i++) {
            Segment figure = v.figures().get(i);
            Box own = places(figures, figure);
            if (!figure.way() && !figure.current()) {
                own = part(figures, figure.from(), nextFigure(v.figures(), i)).aboveBottom(figures.h() * WAY_HEIGHT);
            }
            name(pen, figure, own);
        }
        double x = inner.x() + v.at() * inner.w();
        pen.fill(
                new Box(x - pen.px(1.5), inner.y(), pen.px(3), inner.h()),
                pen.palette().text());
        Path2D head = new Path2D.Double();
        head.moveTo(x, inner.y() + pen.px(9));
        head.lineTo(x - pen.px(7), inner.y() - pen.px(2));
        head.lineTo(x + pen.px(7), inner.y() - pen.px(2));
        head.closePath();
        pen.surface().setColor(pen.palette().text());
        pen.surface().fill(head);
    }

    private static Box part(Box box, double from, double to) {
        double left = box.x() + Math.max(0, from) * box.w();
        double right = box.x() + Math.min(1, to) * box.w();
        return new Box(left, box.y(), right - left, box.h());
    }

    /** The line is as long at every zoom, so that its names cannot grow as far as other words. */
    private static double sizePx(Pen pen) {
        return Math.min(pen.sizePx(TextRole.LABEL), pen.designedPx(TextRole.LABEL) * MOST_GROWTH);
    }

    /** A way between two figures is low, so that the name of the one before it has room above. */
    private static Box places(Box figures, Segment figure) {
        Box whole = part(figures, figure.from(), figure.to());
        return figure.way() ? whole.bottom(whole.h() * WAY_HEIGHT) : whole;
    }

    /** Where the next figure that is no way begins. */
    private static double nextFigure(List<Segment> all, int index) {
        return all.stream()
                .skip(index + 1L)
                .filter(f -> !f.way())
                .findFirst()
                .map(Segment::from)
                .orElse(1.0);
    }

    private static void box(Pen pen, Segment figure, Box box) {
        Box piece = new Box(box.x() + pen.px(1), box.y(), box.w() - pen.px(2), box.h());
        pen.fill(
                piece, figure.current() ? pen.palette().chosen() : pen.palette().sunk());
        if (figure.noted()) {
            pen.fill(piece.bottom(pen.px(5)), pen.palette().caution());
        }
    }

    private static void name(Pen pen, Segment figure, Box box) {
        Box inside = box.inset(pen.px(5), 0);
        if (inside.w() > sizePx(pen) * LETTERS * 0.6) {
            // All names have one size; one without room is left out, since half a name helps nobody.
            TextBlock name = pen.at(figure.name(), figure.current(), sizePx(pen), inside, 3);
            if (name.whole()) {
                pen.midway(
                        name,
                        inside,
                        figure.current()
                                ? pen.palette().onChosen()
                                : pen.palette().text());
            }
        }
    }
}
