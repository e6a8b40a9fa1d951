package crowdline.app.window;

import crowdline.app.shell.MonotonicTicker;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.Source;
import crowdline.live.event.TalkEvent;
import crowdline.live.state.Phase;
import crowdline.live.state.Step;
import crowdline.running.LiveDesk;
import crowdline.show.figure.RemarkForm;
import crowdline.storage.journal.JournalMachine;
import crowdline.storage.journal.JournalOpening;
import crowdline.storage.journal.JournalShelf;
import crowdline.storage.journal.JournalShow;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;

/**
 * A live desk without a screen, to be killed. Takes a folder and the seconds of every figure; reads words from standard
 * input and answers each with {@code ACK} once its event is on the disk. Figure starts are told on the machine's monotonic clock.
 */
final class LiveChild {
    static final int FIGURES = 5000;

    private LiveChild() {}

    public static void main(String[] args) throws IOException {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        double figureS = Double.parseDouble(args[1]);
        JournalOpening opening = new JournalShelf(Path.of(args[0]), JournalMachine.here(new MonotonicTicker()), 3600)
                .open(new JournalShow("/shows/harbour.json", "aa"));
        try (LiveDesk desk = new LiveDesk(opening, (act, variant, figures) -> index -> figureS)) {
            opening.notices().forEach(notice -> out.println("NOTICE " + notice));
            out.println("READY " + opening.events() + " " + where(desk) + " "
                    + ProcessHandle.current()
                            .info()
                            .totalCpuDuration()
                            .orElse(Duration.ZERO)
                            .toMillis());
            BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
            for (String word = in.readLine(); word != null; word = in.readLine()) {
                LiveEvent event = event(word).apply(desk.nowS());
                Step step = desk.submit(event).join();
                desk.written().join();
                out.println((step instanceof Step.Moved ? "ACK " : "REFUSED ") + where(desk));
            }
        }
    }

    /** Act, figure, its start and the moment of this reading, both in nanoseconds of the machine's monotonic clock. */
    private static String where(LiveDesk desk) {
        var state = desk.snapshot().state();
        double nowS = desk.nowS();
        long nowNanos = System.nanoTime();
        if (!(state.phase() instanceof Phase.Flying flying)) {
            return state.actId() + " -1 0 " + nowNanos + " "
                    + state.talk().entries().size();
        }
        long startNanos = nowNanos - Math.round((nowS - flying.startedAtS()) * 1e9);
        return state.actId() + " " + flying.index() + " " + startNanos + " " + nowNanos + " "
                + state.talk().entries().size();
    }

    private static DoubleFunction<LiveEvent> event(String word) {
        return switch (word) {
            case "open" -> atS -> new ShowEvent.ShowOpened(atS, "Harbour Day", List.of("first"));
            case "choose" -> atS -> new FlightEvent.ActChosen(atS, "first", "full", figures(), null);
            case "start" -> FlightEvent.ActStarted::new;
            case "step" -> FlightEvent.Stepped::new;
            case "back" -> FlightEvent.SteppedBack::new;
            case "clock" -> atS -> new FlightEvent.SourceChosen(atS, Source.CLOCK);
            default -> atS -> new TalkEvent.RemarkSaid(atS, word, RemarkForm.FULL);
        };
    }

    private static List<String> figures() {
        return IntStream.range(0, FIGURES).mapToObj(i -> "f" + i).toList();
    }
}
