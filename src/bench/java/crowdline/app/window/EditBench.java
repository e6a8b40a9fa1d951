package crowdline.app.window;

import crowdline.app.window.time.LoadedPredictions;
import crowdline.arrange.ShowArranging;
import crowdline.console.prepare.glance.PrepareView;
import crowdline.edit.act.AddAct;
import crowdline.edit.act.CannotBe;
import crowdline.edit.act.Figures;
import crowdline.edit.act.FirstDraft;
import crowdline.edit.act.Pin;
import crowdline.flight.Workers;
import crowdline.list.ListReader;
import crowdline.loaded.LoadedShow;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.check.LocatedFinding;
import crowdline.show.check.ShowRules;
import crowdline.show.figure.Figure;
import crowdline.speech.pace.Pace;
import crowdline.speech.pace.Paces;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.KindsFile;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** From a number typed about a figure of a 12-figure act to what Prepare shows of it: the edit, and the edit with its prediction. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
@SuppressWarnings("NullAway.Init") // JMH calls the set-up before anything else
public class EditBench {
    private static final String LIST = "run in, loop, stall turn, slow roll, half Cuban, four point roll, humpty bump,"
            + " spin 2 turns, barrel roll, inverted pass, Cuban eight, low pass";

    @Param({"strong aerobatic monoplane", "light aerobatic biplane", "aerobatic two-seater"})
    public String kind = "";

    private final Catalogue catalogue = CatalogueFile.shipped();
    private final Figures figures = new Figures(catalogue);
    private Show show;
    private LoadedShow loaded;
    private String roll;
    private int edits;

    @Setup
    public void make() throws CannotBe {
        Show empty = ShowArranging.empty("A day", LocalDate.of(2027, 5, 2), ZoneOffset.UTC, null);
        show = new AddAct(catalogue, new FirstDraft(catalogue, Pace.DEFAULT, 0.5))
                .fromList(
                        new ListReader(catalogue).read(LIST),
                        new AddAct.Wanted(KindsFile.shipped().named(kind), null, "Solo", "", LocalTime.NOON))
                .of(empty)
                .show();
        Act act = show.acts().get(0);
        roll = act.figures().stream()
                .filter(f -> f.figure().equals("slow roll"))
                .map(Figure::id)
                .findFirst()
                .orElseThrow();
        loaded = new LoadedShow(show, catalogue, Paces.DEFAULT, Workers.ALONE, LoadedShow.FIRST_FLIGHTS);
        loaded.predictAll((n, all) -> {});
    }

    /** The edit alone, with the act laid out again. */
    @Benchmark
    public Show edited() throws CannotBe {
        // Never the same twice: what was flown before is not flown anew.
        double ft = 900 + 0.05 * (edits++ % 10_000);
        return figures.pin(show.acts().get(0).id(), roll, new Pin.Height(ft))
                .of(show)
                .show();
    }

    /** The edit and what Prepare shows of it at once: prediction, picture, findings and seconds. */
    @Benchmark
    public PrepareView shownAtOnce() throws CannotBe {
        Show next = edited();
        LoadedShow judged = loaded.with(next);
        List<LocatedFinding> findings = new ArrayList<>();
        ShowRules.check(next, catalogue)
                .forEach(f -> findings.add(LocatedFinding.inNoLine(f.severity(), f.code(), f.message())));
        findings.addAll(judged.findings());
        return LoadedPredictions.viewAtOnce(judged, findings);
    }

    /** The edit and all that Prepare shows of it in the end, with bands. */
    @Benchmark
    public PrepareView shown() throws CannotBe {
        return LoadedPredictions.view(loaded.with(edited()), List.of());
    }
}
