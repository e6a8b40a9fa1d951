package crowdline.console.walk;

import crowdline.console.walk.WalkView.Bar;
import crowdline.console.walk.WalkView.Segment;
import crowdline.console.walk.WalkView.Stretch;
import crowdline.loaded.ShowLookup;
import crowdline.show.figure.Figure;
import crowdline.timing.FigureTime;
import java.util.ArrayList;
import java.util.List;

/** The line of an act being walked through: its figures, its remarks, and where it is. */
final class WalkBar {
    /** Steps of the line: it is painted again only when the change can be seen. */
    private static final double STEPS = 1500;

    private final ShowLookup words;
    private final Walk walk;
    private final Route route;
    private final double nowS;
    private final double atS;

    WalkBar(ShowLookup words, Walk walk, double nowS) {
        this.words = words;
        this.walk = walk;
        this.nowS = nowS;
        route = walk.route();
        atS = walk.player().positionS(nowS);
    }

    Bar bar() {
        double fromS = walk.player().fromS();
        double lengthS = walk.player().toS() - fromS;
        if (lengthS <= 0) {
            return new Bar(List.of(), List.of(), 0);
        }
        List<String> noted = walk.noted();
        int current = current();
        List<Segment> figures = new ArrayList<>();
        for (int i = 0; i < route.figures().size(); i++) {
            FigureTime figure = route.figures().get(i);
            figures.add(new Segment(
                    (figure.startS() - fromS) / lengthS,
                    (figure.endS() - fromS) / lengthS,
                    words.name(route.act(), route.tour().variant().name(), figure.figureId()),
                    route.act()
                            .figure(figure.figureId())
                            .filter(Figure::transit)
                            .isPresent(),
                    i == current,
                    noted.contains(figure.figureId())));
        }
        List<Stretch> remarks = route.plan().placed().stream()
                .map(p -> new Stretch(
                        (p.startS() - fromS) / lengthS,
                        (p.endS() - fromS) / lengthS,
                        walk.timer() == null && p.startS() <= atS && atS < p.endS()))
                .toList();
        return new Bar(figures, remarks, steps((shownS(current) - fromS) / lengthS));
    }

    /** Where the line stands: while a pass is timed as far in the figure walked as its time goes, no further than its end. */
    private double shownS(int current) {
        PassTimer timer = walk.timer();
        if (timer == null) {
            return atS;
        }
        if (current < 0) {
            return walk.player().fromS();
        }
        FigureTime walked = route.figures().get(current);
        return Math.min(walked.endS(), walked.startS() + timer.inFigureS(nowS));
    }

    /** Which figure of the line is shown: the one walked while a pass is timed, wherever the player stands. */
    private int current() {
        PassTimer timer = walk.timer();
        if (timer == null) {
            return route.index(atS);
        }
        String walked = timer.index() < 0 ? "" : walk.figureId(nowS).orElse("");
        return route.figures().stream().map(FigureTime::figureId).toList().indexOf(walked);
    }

    /** A share in steps that can be seen, 0 to 1. */
    static double steps(double share) {
        return Math.max(0, Math.min(1, Math.round(share * STEPS) / STEPS));
    }
}
