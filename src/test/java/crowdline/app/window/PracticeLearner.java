package crowdline.app.window;

import crowdline.app.window.practice.PracticeShow;
import crowdline.console.keys.Command;
import crowdline.console.live.Handles;
import crowdline.console.live.LiveView;
import crowdline.live.state.Course;
import crowdline.live.state.LiveState;
import crowdline.live.state.Phase;
import crowdline.loaded.ShowLookup;
import crowdline.practice.Change;
import crowdline.practice.Piece;
import crowdline.practice.PracticeFlight;
import crowdline.show.Act;
import crowdline.show.figure.Figure;
import crowdline.show.figure.RemarkForm;
import crowdline.timing.FigureTime;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.atomic.AtomicLong;
import org.jspecify.annotations.Nullable;

/** Somebody who practises, by the keys of Live alone, on a clock that is moved by hand. */
public final class PracticeLearner {
    private static final double NANOS_PER_S = 1e9;
    private static final double GLANCE_S = 0.5;

    private final PracticeShow practice;
    private final Act act;
    private final AtomicLong nanos;
    private final long beganNanos;
    private @Nullable String speaking;
    private double sinceS;

    public PracticeLearner(PracticeShow practice, AtomicLong nanos) {
        this.practice = practice;
        this.nanos = nanos;
        beganNanos = nanos.get();
        act = practice.running().loaded().show().act(practice.flight().actId()).orElseThrow();
    }

    private PracticeFlight flight() {
        return practice.flight();
    }

    /** Looks at the sky, presses what it shows so many seconds later, and says what the screen says. */
    public void looks(double needsS) throws ExecutionException, InterruptedException {
        Deque<Piece> toCome = new ArrayDeque<>(flight().pieces());
        while (!practice.isOver()) {
            waitFor(nowS() + GLANCE_S);
            while (!toCome.isEmpty() && toCome.peek().fromS() + needsS <= nowS()) {
                sees(toCome.remove());
            }
            speaks();
        }
    }

    /** Says what is on the screen from when it is due there, as long as it takes, and then marks it as said. */
    private void speaks() throws ExecutionException, InterruptedException {
        Handles shown = practice.view().handles();
        String id = state().incidentOpen() || shown.sayWaits() ? null : shown.sayId();
        if (id == null || !id.equals(speaking)) {
            speaking = id;
            sinceS = nowS();
            return;
        }
        ShowLookup words = practice.running().loaded().words();
        RemarkForm form = shown.sayShort() ? RemarkForm.SHORT : RemarkForm.FULL;
        if (nowS() - sinceS >= words.time(id, form).orElseThrow().seconds()) {
            press(Command.SAID);
        }
    }

    /** Begins with the slot, steps by the times of the plan, never looks up and says nothing. */
    public void readsTheList() throws ExecutionException, InterruptedException {
        for (FigureTime time : practice.running()
                .loaded()
                .prediction(flight().actId(), flight().variant())
                .orElseThrow()
                .times()
                .figures()) {
            waitFor(flight().slotS() + time.startS());
            press(Command.NEXT);
        }
        waitFor(flight().overS());
    }

    private void sees(Piece piece) throws ExecutionException, InterruptedException {
        switch (piece.kind()) {
            case FIGURE -> goTo(piece.figureId());
            case WAY -> {
                if (next().equals(piece.figureId())) {
                    press(Command.NEXT);
                }
            }
            case UNPLANNED -> press(Command.OFF_PLAN);
            case HOLD -> press(Command.HOLD);
            case AWAY -> press(flight().change(Change.Kind.INCIDENT).isPresent() ? Command.INCIDENT : Command.END_ACT);
        }
    }

    private void goTo(String figureId) throws ExecutionException, InterruptedException {
        if (state().phase() instanceof Phase.Held) {
            press(Command.HOLD);
        }
        int index = course().figureIds().indexOf(figureId);
        if (index < course().position() || course().droppedIds().contains(figureId)) {
            press(Command.OFF_PLAN);
            return;
        }
        for (int i = 0; i < course().figureIds().size() && !figureId.equals(state().figureId()); i++) {
            List<String> ahead = ahead();
            boolean swapped = ahead.size() > 1
                    && ahead.get(1).equals(figureId)
                    && flight().figure(ahead.get(0)).isPresent();
            press(ahead.indexOf(figureId) == 0 ? Command.NEXT : swapped ? Command.SWAP : Command.DROP);
        }
    }

    /** What is to come on the screen, without the ways. */
    private List<String> ahead() {
        List<String> ids = course().figureIds();
        return ids.subList(course().nextIndex().orElse(ids.size()), ids.size()).stream()
                .filter(id -> !course().droppedIds().contains(id))
                .filter(id -> !act.figure(id).map(Figure::transit).orElse(false))
                .toList();
    }

    private String next() {
        Course course = course();
        return course.nextIndex().isPresent()
                ? course.figureIds().get(course.nextIndex().getAsInt())
                : "";
    }

    private Course course() {
        return state().course();
    }

    private LiveState state() {
        return practice.running().desk().snapshot().state();
    }

    /** Seconds of the practice. */
    double nowS() {
        return practice.running().desk().nowS();
    }

    /** Lets time pass to a moment; everything in the program has seen it. */
    public void waitFor(double atS) throws ExecutionException, InterruptedException {
        while (atS - nowS() > 1) {
            nanos.addAndGet((long) NANOS_PER_S);
            practice.running().wake();
        }
        nanos.set(beganNanos + Math.round(atS * NANOS_PER_S));
        practice.running().wake();
    }

    public void press(Command key) throws ExecutionException, InterruptedException {
        LiveView view = practice.view();
        practice.carryOut(key, view.handles());
        practice.running().wake();
    }
}
