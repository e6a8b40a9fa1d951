package crowdline.paper;

import crowdline.flight.Workers;
import crowdline.live.debrief.DayRun;
import crowdline.live.debrief.Debrief;
import crowdline.live.event.Source;
import crowdline.live.state.Announced;
import crowdline.loaded.LoadedShow;
import crowdline.measure.Measures;
import crowdline.show.Act;
import crowdline.show.Performer;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Redrawn;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.speech.pace.Paces;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.ShowFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

/** Shows that are hard to put on paper. */
final class PaperShows {
    static final String LONG_WORD = "Wrenfordshire".repeat(400).substring(0, 5000);
    static final String LONG_NAME =
            "The Wrenfordshire Aerial Gardeners ".repeat(143).substring(0, 5000);
    static final String HEBREW = "דנה כהן (מטוס)";
    static final String ARABIC = "سلمى الطيار";

    private PaperShows() {}

    static Show demo() {
        try {
            return Objects.requireNonNull(new ShowFile()
                    .read(Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json"))
                    .show());
        } catch (ShowFileException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The demo with names as long and as far from the usual as names can be. */
    static Show named(String name) {
        Show demo = demo();
        List<Performer> performers = demo.performers().stream()
                .map(p -> new Performer(p.id(), name, name, List.of(new Performer.SourcedFact(name, name))))
                .toList();
        Show show = demo.withPerformers(performers);
        Act act = demo.acts().get(0);
        List<Figure> figures = new ArrayList<>(act.figures());
        for (int i = 0; i < 3; i++) {
            figures.set(i, titled(figures.get(i), name));
        }
        return show.withActs(
                List.of(act.withTitle(name).withFigures(figures, List.of(Remark.of("long", RemarkKind.FACT, name)))),
                List.of());
    }

    private static Figure titled(Figure f, String title) {
        return new Figure(
                f.id(),
                f.figure(),
                title,
                title,
                f.elements(),
                f.durationS(),
                f.exit(),
                f.minEntryKt(),
                f.quiets(),
                f.remarks());
    }

    /** The demo with one piece that the layout put between two figures, so that something is assumed. */
    static Show withATransit() {
        Show demo = demo();
        Act act = demo.acts().get(0);
        List<Figure> figures = new ArrayList<>(act.figures());
        Figure f = figures.get(1);
        figures.set(1, Redrawn.asked(f, null, true));
        return demo.withAct(act.withFigures(figures, act.remarks()));
    }

    /** The demo's first act as nothing but so many passes, each timed and with words of its own. */
    static Show of(int figures) {
        Show demo = demo();
        Act act = demo.acts().get(0);
        List<Figure> all = IntStream.range(0, figures)
                .mapToObj(i -> new Figure(
                        "f" + i,
                        "low pass",
                        null,
                        null,
                        null,
                        14.0,
                        null,
                        null,
                        List.of(),
                        List.of(
                                Remark.of("call" + i, RemarkKind.CALL, "Here comes pass " + (i + 1) + "."),
                                Remark.of("fact" + i, RemarkKind.FACT, "That was close, and number " + i + "."))))
                .toList();
        Variant variant = new Variant("full", null, all.stream().map(Figure::id).toList());
        return demo.withActs(List.of(act.flown(act.entry(), all, List.of(variant))), List.of());
    }

    static LoadedShow loaded(Show show) {
        return new LoadedShow(show, CatalogueFile.shipped(), Paces.DEFAULT, Workers.ALONE, 3);
    }

    static Wanted wanted(Show show, boolean large) {
        return new Wanted(loaded(show), show.acts(), act -> act.variants().get(0), false, large, null, Measures.USUAL);
    }

    /** A debrief with every fate there is, and names of any length. */
    static Debrief debrief() {
        List<Debrief.FigureRun> figures = new ArrayList<>();
        List<Debrief.RemarkRun> remarks = new ArrayList<>();
        for (Debrief.Fate fate : Debrief.Fate.values()) {
            figures.add(new Debrief.FigureRun(
                    fate.name(), LONG_NAME.substring(0, 400), fate, 1.0, 1234.5, 1.0, 999.9, 77, Source.CLOCK, true));
            figures.add(new Debrief.FigureRun("n" + fate, "loop", fate, null, null, null, null, 0, null, false));
        }
        for (Debrief.Told told : Debrief.Told.values()) {
            remarks.add(new Debrief.RemarkRun(told.name(), RemarkKind.DUTY, LONG_WORD, null, told, false, 12.0));
        }
        return new Debrief(
                HEBREW,
                List.of(new Debrief.Run("a", LONG_WORD, "full", 2, 0, null, 600.0, figures, List.of(), remarks)),
                remarks,
                List.of(),
                List.of(new Announced.Page("lost", HEBREW, 3, 60.0, List.of(LONG_NAME))),
                List.of(),
                List.of(
                        "Change this. " + LONG_NAME,
                        LONG_WORD + ": loop took 3 s longer",
                        LONG_WORD + ": spin was dropped"),
                DayRun.NONE);
    }
}
