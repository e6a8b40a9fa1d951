package crowdline.console;

import crowdline.console.debrief.DebriefPlace;
import crowdline.console.live.OnAir;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.path.CrowdPicture;
import crowdline.console.place.Place;
import crowdline.console.practice.Practice;
import crowdline.console.practice.PracticeChoice;
import crowdline.console.practice.PracticeHost;
import crowdline.console.practice.PracticeScored;
import crowdline.console.practice.PracticeWindow;
import crowdline.console.practice.ScorePanel;
import crowdline.console.practice.SkyWindow;
import crowdline.console.practice.Spotted;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Tone;
import java.awt.Frame;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.DoubleSupplier;
import javax.swing.JComponent;
import javax.swing.Timer;
import org.jspecify.annotations.Nullable;

/**
 * Puts a practice flight into Live in place of the day's show, with the sky above it, and the day's show back when it is over
 * or left. The day's show goes on all the time and learns nothing of it; if an act of it begins, the practice is left at once.
 * As long as the incident page is open nothing is left: nobody may find it gone. On the event thread.
 */
final class PracticeGuide {
    /** Sixty pictures a second. */
    private static final int FRAME_MS = 16;

    private static final Mark FLYING = new Mark(
            Form.DIAMOND,
            Tone.CAUTION,
            "Practice: step the act as you see it flown. Ctrl+G leaves it for the day's show");
    private static final Mark NO_ROOM = new Mark(
            Form.DIAMOND,
            Tone.CAUTION,
            "Practice: there is no room for the sky beside this window, so it is above the rows. Ctrl+G leaves it");
    private static final Mark FLYING_STILL = new Mark(
            Form.DIAMOND,
            Tone.CAUTION,
            "The practice flight is still going: Ctrl+G ends it and shows here how it went, F5 goes back to it");
    private static final String DAY_BEGAN = "An act of the day has begun, so the practice was left.";

    private final Frame frame;
    private final PracticeHost host;
    private final ConsolePane pane;
    private final IncidentCall incident;
    private final Consumer<Mark> say;
    private final DoubleSupplier nowS;
    private final Consumer<Place> go;
    private final Timer timer = new Timer(FRAME_MS, e -> look());
    private @Nullable OnAir day;
    private @Nullable Flying flying;
    private Optional<PracticeChoice> last = Optional.empty();
    /** Counts what was asked for: only the last answer is taken. */
    private int asked;
    /** Where it was when it was looked at last. */
    private @Nullable Place looked;

    /** A practice and the sky it is looked at in, in Live or apart. */
    private record Flying(
            Practice practice, CrowdPicture sky, @Nullable SkyWindow apart) {}

    /**
     * @param say says something in the foot line
     * @param nowS seconds on a clock that never goes back
     * @param go goes to a place
     */
    PracticeGuide(
            Frame frame,
            PracticeHost host,
            ConsolePane pane,
            IncidentCall incident,
            Consumer<Mark> say,
            DoubleSupplier nowS,
            Consumer<Place> go) {
        this.frame = frame;
        this.host = host;
        this.pane = pane;
        this.incident = incident;
        this.say = say;
        this.nowS = nowS;
        this.go = go;
        timer.setCoalesce(true);
    }

    /** Another show of the day runs now, or none. */
    void day(@Nullable OnAir show) {
        asked++;
        day = show;
        drop();
        run(show);
    }

    private void run(@Nullable OnAir show) {
        pane.live().run(show);
        incident.runs(show);
    }

    /** Asks for a practice flight; while one is flown, leaves it. */
    void turn() {
        if (flying == null) {
            ask();
        } else {
            leave();
        }
    }

    private void ask() {
        if (mayNot()) {
            return;
        }
        PracticeWindow.ask(frame, pane.appearance(), host, last, this::begin, this::spot);
    }

    private boolean mayNot() {
        Optional<String> why = host.refusal();
        why.ifPresent(this::caution);
        return why.isPresent();
    }

    private void caution(String why) {
        say.accept(new Mark(Form.DIAMOND, Tone.CAUTION, why));
    }

    private void begin(PracticeChoice choice) {
        if (mayNot()) {
            return;
        }
        last = Optional.of(choice);
        int number = ++asked;
        host.begin(choice, new PracticeHost.Begun() {
            @Override
            public void flies(Practice practice) {
                if (number != asked || pane.inIncident() || flying != null || mayNot()) {
                    practice.drop();
                } else {
                    fly(practice);
                }
            }

            @Override
            public void doesNot(String why) {
                caution(why);
            }
        });
    }

    private void spot(PracticeChoice choice) {
        last = Optional.of(choice);
        host.spot(choice, new PracticeHost.Spotting() {
            @Override
            public void asks(Spotted asked) {
                if (flying == null && !pane.inIncident() && !mayNot()) {
                    PracticeWindow.spot(frame, pane.appearance(), asked, nowS, PracticeGuide.this::spot);
                }
            }

            @Override
            public void doesNot(String why) {
                caution(why);
            }
        });
    }

    private void fly(Practice practice) {
        CrowdPicture sky = new CrowdPicture(pane.appearance());
        sky.wear(pane.appearance(), 1);
        sky.show(practice.sky());
        SkyWindow apart = host.skyApart() ? SkyWindow.beside(frame, sky).orElse(null) : null;
        flying = new Flying(practice, sky, apart);
        if (apart == null) {
            pane.live().sky(sky);
        }
        run(practice.onAir());
        go.accept(Place.LIVE);
        say.accept(apart == null && host.skyApart() ? NO_ROOM : FLYING);
        timer.start();
        look();
        // Not every screen gives the keys back by itself when the window that had them is gone.
        frame.requestFocus();
    }

    /** Shows the sky as it is now, and sees whether it is time to leave. */
    private void look() {
        Flying now = flying;
        if (now == null) {
            return;
        }
        now.sky().show(now.practice().sky());
        Place before = looked;
        looked = pane.place();
        if (looked == Place.DEBRIEF && before != looked) {
            say.accept(FLYING_STILL);
        }
        if (pane.inIncident()) {
            return;
        }
        SkyWindow apart = now.apart();
        if (apart != null) {
            apart.show();
        }
        if (host.refusal().isPresent()) {
            drop();
            run(day);
            caution(DAY_BEGAN);
        } else if (now.practice().isOver()) {
            leave();
        }
    }

    private void leave() {
        Flying now = flying;
        if (now == null || pane.inIncident()) {
            return;
        }
        putAway(now);
        run(day);
        now.practice().end(this::tell);
    }

    private void tell(PracticeScored scored) {
        if (scored.score().lines().isEmpty()) {
            caution("The practice was left before there was anything to do, so there is nothing to tell.");
            return;
        }
        pane.debrief().show(new Told(scored));
        // Nobody is led away from the incident page, or from an act of the day.
        if (flying == null && !pane.inIncident() && host.refusal().isEmpty()) {
            go.accept(Place.DEBRIEF);
        }
    }

    /** How a practice went, as the Debrief shows it. */
    private final class Told implements DebriefPlace.Scored {
        private final PracticeScored scored;
        private final ScorePanel page;

        Told(PracticeScored scored) {
            this.scored = scored;
            page = new ScorePanel(
                    pane.appearance(),
                    scored,
                    this::again,
                    this::next,
                    () -> pane.debrief().show((DebriefPlace.Scored) null));
        }

        @Override
        public JComponent page() {
            return page;
        }

        @Override
        public JComponent first() {
            return page.first();
        }

        @Override
        public void next() {
            begin(scored.choice().next());
        }

        @Override
        public void again() {
            begin(scored.choice());
        }

        @Override
        public void wear(Appearance appearance) {
            page.wear(appearance);
        }
    }

    private void drop() {
        Flying now = flying;
        if (now != null) {
            putAway(now);
            now.practice().drop();
        }
    }

    private void putAway(Flying now) {
        timer.stop();
        flying = null;
        pane.live().sky(null);
        SkyWindow apart = now.apart();
        if (apart != null) {
            apart.close();
        }
    }

    void wear(Appearance appearance) {
        Flying now = flying;
        if (now != null) {
            now.sky().wear(appearance, 1);
        }
    }

    /** The window is closed. */
    void close() {
        asked++;
        drop();
    }
}
