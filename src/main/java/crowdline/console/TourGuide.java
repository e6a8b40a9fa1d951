package crowdline.console;

import crowdline.console.keys.CommandActions;
import crowdline.console.place.Place;
import crowdline.console.theme.Appearance;
import crowdline.console.tour.Ring;
import crowdline.console.tour.Tour;
import crowdline.console.tour.TourRow;
import java.util.function.Consumer;
import javax.swing.JFrame;
import javax.swing.Timer;
import org.jspecify.annotations.Nullable;

/** Leads through the tour: goes to each step's place, says its words, points at what they are about. On the event thread. */
final class TourGuide {
    private static final int FOLLOW_MS = 150;

    private final ConsolePane pane;
    private final TourRow row;
    private final Ring ring;
    private final Consumer<Runnable> demo;
    private final Consumer<Place> go;
    private final Timer follower = new Timer(FOLLOW_MS, e -> follow());
    private @Nullable Tour tour;

    /**
     * @param demo opens the demo show and then runs what it is given; not at all if the show that is open is not left
     * @param go goes to a place
     */
    TourGuide(JFrame frame, ConsolePane pane, CommandActions actions, Consumer<Runnable> demo, Consumer<Place> go) {
        this.pane = pane;
        this.demo = demo;
        this.go = go;
        row = new TourRow(pane.appearance(), actions, this::leave);
        ring = new Ring(pane);
        pane.under(row);
        frame.setGlassPane(ring);
    }

    boolean isOn() {
        return tour != null;
    }

    boolean isFollowing() {
        return follower.isRunning();
    }

    /** Begins, goes on, or ends after the last step. */
    void next() {
        Tour now = tour;
        if (now == null) {
            demo.accept(() -> show(Tour.begin()));
        } else if (now.isLast()) {
            leave();
        } else {
            show(now.next());
        }
    }

    void back() {
        Tour now = tour;
        if (now != null) {
            show(now.back());
        }
    }

    void leave() {
        tour = null;
        follower.stop();
        row.setVisible(false);
        ring.point("", pane.appearance().palette().accent());
    }

    /** What it points at may have moved, or come. */
    private void follow() {
        if (!row.isDisplayable()) {
            // A timer that runs on after its window is closed would keep the program from ending.
            follower.stop();
        } else if (pane.inIncident()) {
            leave();
        } else {
            ring.follow();
        }
    }

    void wear(Appearance appearance) {
        row.wear(appearance);
        Tour now = tour;
        if (now != null) {
            ring.point(now.step().pointsAt(), appearance.palette().accent());
        }
    }

    private void show(Tour next) {
        tour = next;
        follower.start();
        row.show(next);
        go.accept(next.step().place());
        ring.point(next.step().pointsAt(), pane.appearance().palette().accent());
    }
}
