package crowdline.console.live.now;

import crowdline.console.paint.Box;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.path.ActPainter;
import crowdline.console.path.CraftPainter;
import crowdline.console.path.PathStroke;
import crowdline.console.path.SidePainter;
import crowdline.console.path.SkyView;
import crowdline.console.theme.TextRole;
import crowdline.measure.Units;
import crowdline.sheet.PathFrame;
import crowdline.sight.PathExtent;
import crowdline.sight.PathView;
import crowdline.sight.SideView;
import crowdline.sight.SideView.Craft;
import crowdline.sight.SideView.Spot;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * Paints the figure being flown as the crowd sees it, as large as its place allows, with its direction and the aircraft
 * on it, and faintly how the next one begins; before the act the first figure. Its heights, and where it lies in the act,
 * only where that takes nothing from it.
 */
final class FigurePainter {
    private static final double HEAD_PX = 18;
    /** Room around the figure for the aircraft. */
    private static final double EDGE_PX = 16;

    private static final double HEIGHTS_PX = 62;
    private static final double OVERVIEW_SHARE = 0.36;
    /** What stands beside the figure may make it smaller to this share of its size, no further. */
    private static final double TAKES_NOTHING = 0.9;
    /** Metres. Nothing is drawn larger than if it were this far across. */
    private static final double LEAST_M = 120;
    /** Metres, of one that is larger than that the other way. */
    private static final double LEAST_FLAT_M = 40;
    /** The ground is drawn where it is no further below the figure than this share of the figure's height. */
    private static final double NEAR_GROUND = 0.45;
    /** How much of the next figure is drawn, against the size of the one being flown. */
    private static final double NEXT_SHARE = 0.6;
    /** How much of it has its place in the picture; the rest only where there is room. */
    private static final double NEXT_IN_FULL = 0.15;

    private FigurePainter() {}

    /** Where things go. */
    private record Places(Box figure, Box heights, Box overview) {}

    /**
     * @param sketch how it usually looks where it has no path
     * @param sketches what keeps that painted
     */
    static void paint(Pen pen, SideView view, SkyView sketch, SketchImage sketches, Box box) {
        int shown = view.current() >= 0 ? view.current() : view.next();
        List<Spot> spots = view.spots(shown);
        if (spots.size() < 2) {
            withoutPath(pen, view, sketch, sketches, box);
            return;
        }
        Box head = box.top(pen.px(HEAD_PX));
        PathExtent own = extent(spots);
        // What was planned to follow has its place whatever is dropped or swapped, so that nothing moves; what comes
        // instead
        // begins nobody knows where.
        List<Spot> next = view.current() >= 0 ? view.spots(view.current() + 1) : List.of();
        PathExtent drawn = withGround(with(own, PathStroke.beginning(next, NEXT_IN_FULL * sizeM(own))));
        Places places = places(pen, view, drawn, box.belowTop(head.h()));
        PathFrame frame = frame(drawn, places.figure().inset(pen.px(EDGE_PX), pen.px(EDGE_PX)));
        if (drawn.low() <= 0) {
            Box sky = places.figure();
            pen.fill(
                    new Box(sky.x(), frame.y(0), sky.w(), pen.px(1.5)),
                    pen.palette().rule());
        }
        Color colour = pen.palette().pathNow();
        if (view.next() == view.current() + 1) {
            next(pen, next, own, frame, places.figure());
        }
        PathStroke.line(pen, spots, frame, PathView.SIDE, 4.5, colour);
        PathStroke.directions(pen, spots, frame, colour);
        heights(pen, own, frame, places.heights());
        overview(pen, view, spots, places.overview());
        String word = view.current() >= 0 ? "from the crowd" : "next, from the crowd";
        TextBlock caption = pen.line(word, TextRole.LABEL, false, head);
        pen.midway(caption, head, pen.palette().soft());
        Craft craft = view.craft();
        if (craft != null) {
            boolean inside = CraftPainter.isIn(frame, PathView.SIDE, craft, places.figure());
            CraftPainter.paint(
                    pen,
                    frame,
                    PathView.SIDE,
                    craft,
                    view.eye(),
                    places.figure().inset(pen.px(9), pen.px(9)));
            CraftPainter.word(pen, craft, view.craftWord(inside), head.rightOf(caption.widthPx() + pen.px(40)));
        }
    }

    /** A figure that is only timed has no path: it is sketched; but an aircraft that is read is shown where it is. */
    private static void withoutPath(Pen pen, SideView view, SkyView sketch, SketchImage sketches, Box box) {
        Craft craft = view.craft();
        if (craft != null) {
            ActPainter.paint(pen, new SideView(List.of(), -1, craft, view.crowdM()), box);
        } else if (!sketch.isEmpty()) {
            Box head = box.top(pen.px(HEAD_PX));
            String word = view.current() >= 0 ? "a sketch of it" : "next, a sketch of it";
            pen.midway(
                    pen.line(word, TextRole.LABEL, false, head),
                    head,
                    pen.palette().soft());
            sketches.paint(pen, sketch, box.belowTop(head.h()));
        } else if (!view.isEmpty()) {
            TextBlock words = pen.lines("No drawing: only its time is known", TextRole.SMALL, false, box, 2);
            words.draw(
                    pen.surface(),
                    box.x() + (box.w() - words.widthPx()) / 2,
                    box.midY() - words.heightPx() / 2,
                    pen.palette().soft());
        }
    }

    private static PathExtent extent(List<Spot> spots) {
        Spot first = spots.get(0);
        double up = Math.max(0, first.heightM());
        return with(new PathExtent(first.alongM(), first.alongM(), up, up), spots);
    }

    private static PathExtent with(PathExtent extent, List<Spot> spots) {
        PathExtent all = extent;
        for (Spot spot : spots) {
            all = all.with(spot.alongM(), Math.max(0, spot.heightM()));
        }
        return all;
    }

    private static double sizeM(PathExtent extent) {
        return Math.max(extent.wideM(), extent.tallM());
    }

    private static PathExtent withGround(PathExtent own) {
        boolean near = own.low() <= NEAR_GROUND * Math.max(own.tallM(), 0.3 * sizeM(own));
        return near ? own.with(own.left(), 0) : own;
    }

    private static PathFrame frame(PathExtent extent, Box box) {
        double wider = Math.max(0, leastM(extent.tallM()) - extent.wideM()) / 2;
        double taller = Math.max(0, leastM(extent.wideM()) - extent.tallM()) / 2;
        PathExtent least = new PathExtent(
                extent.left() - wider, extent.right() + wider, extent.low() - taller, extent.high() + taller);
        return PathFrame.fit(least, box.x(), box.y(), box.w(), box.h());
    }

    /** A figure that is large one way may be small the other. */
    private static double leastM(double otherWayM) {
        return otherWayM >= LEAST_M ? LEAST_FLAT_M : LEAST_M;
    }

    private static double scale(Pen pen, PathExtent extent, Box box) {
        return frame(extent, box.inset(pen.px(EDGE_PX), pen.px(EDGE_PX))).pxPerM();
    }

    /** The figure has its place first; then its heights and the overview, if they take nothing from it. */
    private static Places places(Pen pen, SideView view, PathExtent extent, Box box) {
        double alone = scale(pen, extent, box) * TAKES_NOTHING;
        Box none = new Box(box.x(), box.y(), 0, 0);
        Box heights = none;
        Box figure = box;
        Box beside = box.leftOf(pen.px(HEIGHTS_PX));
        if (scale(pen, extent, beside) >= alone) {
            heights = box.right(pen.px(HEIGHTS_PX));
            figure = beside;
        }
        if (view.hasDepth()) {
            Box left = figure.leftOf(box.w() * OVERVIEW_SHARE);
            Box above = figure.aboveBottom(box.h() * OVERVIEW_SHARE);
            if (scale(pen, extent, left) >= alone) {
                return new Places(left, moved(heights, left.maxX()), box.right(box.w() * OVERVIEW_SHARE));
            }
            if (scale(pen, extent, above) >= alone) {
                return new Places(above, heights.top(above.h()), box.bottom(box.h() * OVERVIEW_SHARE));
            }
        }
        return new Places(figure, heights, none);
    }

    private static Box moved(Box heights, double x) {
        return new Box(x, heights.y(), heights.w(), heights.h());
    }

    private static void next(Pen pen, List<Spot> spots, PathExtent own, PathFrame frame, Box box) {
        List<Spot> beginning = PathStroke.beginning(spots, NEXT_SHARE * sizeM(own));
        Shape before = pen.surface().getClip();
        pen.surface().clip(new Rectangle2D.Double(box.x(), box.y(), box.w(), box.h()));
        PathStroke.line(pen, beginning, frame, PathView.SIDE, 2, pen.palette().path());
        pen.surface().setClip(before);
    }

    /** The height of the top, and of the bottom if there is room between them. */
    private static void heights(Pen pen, PathExtent own, PathFrame frame, Box box) {
        if (box.w() <= 0) {
            return;
        }
        double line = pen.lineHeightPx(false, pen.designedPx(TextRole.LABEL));
        height(pen, own.high(), frame, box);
        if (frame.y(own.low()) - frame.y(own.high()) > 3 * line) {
            height(pen, own.low(), frame, box);
        }
    }

    private static void height(Pen pen, double heightM, PathFrame frame, Box box) {
        double sizePx = pen.designedPx(TextRole.LABEL);
        double y = frame.y(heightM);
        TextBlock words = pen.at(pen.appearance().measures().roughly(Units.ftFromM(heightM)), false, sizePx, box, 1);
        pen.fill(
                new Box(box.x(), y - pen.px(0.5), pen.px(6), pen.px(1)),
                pen.palette().soft());
        words.draw(
                pen.surface(),
                box.x() + pen.px(9),
                y - words.heightPx() / 2,
                pen.palette().soft());
    }

    /** Where the figure lies in the act: from above, with the crowd at the bottom. */
    private static void overview(Pen pen, SideView view, List<Spot> spots, Box box) {
        if (box.w() < pen.px(60) || box.h() < pen.px(40)) {
            return;
        }
        Box head = box.top(pen.px(HEAD_PX));
        TextBlock words = pen.line("from above", TextRole.LABEL, false, head);
        Box inner = box.belowTop(head.h()).aboveBottom(pen.px(16)).inset(pen.px(8), pen.px(4));
        PathExtent all = view.extent(PathView.PLAN);
        PathFrame frame = PathFrame.fit(all, inner.x(), inner.y(), inner.w(), inner.h());
        Box area = new Box(
                frame.x(all.left()), frame.y(all.high()), frame.pxPerM() * all.wideM(), frame.pxPerM() * all.tallM());
        pen.midway(
                words,
                new Box(inner.x(), area.y() - head.h() - pen.px(2), inner.w(), head.h()),
                pen.palette().soft());
        pen.hollow(area, pen.px(1), pen.palette().rule());
        Double crowdM = view.crowdM();
        double crowdY = frame.y(crowdM == null ? 0 : -crowdM);
        pen.fill(
                new Box(area.x(), crowdY - pen.px(1.5), area.w(), pen.px(3)),
                pen.palette().rule());
        SidePainter.here(pen, frame.x(0), crowdY);
        PathStroke.line(pen, spots, frame, PathView.PLAN, 3, pen.palette().pathNow());
        Craft craft = view.craft();
        if (craft != null) {
            CraftPainter.small(pen, frame, PathView.PLAN, craft, area);
        }
    }
}
