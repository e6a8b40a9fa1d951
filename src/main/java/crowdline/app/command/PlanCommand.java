package crowdline.app.command;

import crowdline.app.shell.ExitCode;
import crowdline.app.shell.Folders;
import crowdline.app.shell.Terminal;
import crowdline.flight.Workers;
import crowdline.loaded.ActPlans;
import crowdline.loaded.ActPlans.Planned;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.ShowLoader;
import crowdline.loaded.ShowLookup;
import crowdline.patter.Margins;
import crowdline.patter.Placed;
import crowdline.patter.Unplaced;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.speech.pace.Pace;
import crowdline.speech.pace.Paces;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.json.JsonOut;
import crowdline.storage.show.CatalogueFile;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans what to say when, act by act. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        description = "Plans which remark is said when and in which form, and says what does not fit and why.",
        footer = {
            "Just fits: it runs over if its figure turns out short. Would fit on a good day: there is room only",
            "if the figure turns out long.",
            "Ends with 0 if all went well, 1 if a duty does not fit, 2 if the file cannot be used."
        })
public final class PlanCommand implements Callable<Integer> {
    private final Terminal terminal;
    private final Workers workers;
    private final Folders folders;

    @Parameters(paramLabel = "SHOW", description = "The show file.")
    private @Nullable Path file;

    @Mixin
    private final ActChoice choice = new ActChoice();

    @Mixin
    private final PaceOption pace = new PaceOption();

    @Option(names = "--json", description = "Print the plan as JSON.")
    private boolean json;

    public PlanCommand(Terminal terminal, Folders folders, Workers workers) {
        this.workers = workers;
        this.terminal = terminal;
        this.folders = folders;
    }

    @Override
    public Integer call() throws ShowFileException {
        Paces paces = pace.paces(folders);
        Pace speaker = paces.own();
        LoadedShow loaded = new UsableShow(terminal)
                .load(
                        Objects.requireNonNull(file),
                        new ShowLoader(CatalogueFile::shipped, () -> paces, folders.passes(), workers),
                        LoadedShow.FLIGHTS);
        Show show = loaded.show();
        List<Act> acts = choice.of(show);
        for (Act act : acts) {
            String variant = choice.variant(act).name();
            if (loaded.prediction(act.id(), variant).isEmpty()) {
                throw new ShowFileException("the act " + act.id()
                        + " cannot be predicted, so nothing can be planned in it; crowdline check says why");
            }
        }
        List<Planned> planned = ActPlans.of(loaded, acts, choice::variant);
        if (json) {
            ShowLookup words = loaded.words();
            Map<String, Object> all = new LinkedHashMap<>();
            all.put("acts", planned.stream().map(p -> row(p, words)).toList());
            all.put("pace", speaker.name());
            terminal.json(JsonOut.of(all));
        } else {
            terminal.line(PaceOption.sentence(speaker));
            terminal.line("");
            planned.forEach(p -> PlanTable.lines(loaded.words(), p).forEach(terminal::line));
        }
        return unsaidDuties(show, planned).isEmpty() ? ExitCode.FINE : ExitCode.BLOCKED;
    }

    /** Duties that no act has room for. */
    private static Set<String> unsaidDuties(Show show, List<Planned> planned) {
        Map<String, Remark> remarks = show.remarksById();
        Set<String> unsaid = new HashSet<>();
        planned.forEach(p -> p.plan().unplaced().stream()
                .map(Unplaced::remarkId)
                .filter(id -> Objects.requireNonNull(remarks.get(id)).kind() == RemarkKind.DUTY)
                .forEach(unsaid::add));
        planned.forEach(p -> p.plan().placed().forEach(placed -> unsaid.remove(placed.remarkId())));
        return unsaid;
    }

    private static Map<String, Object> row(Planned planned, ShowLookup words) {
        Margins margins = planned.margins();
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("id", planned.act().id());
        row.put("variant", planned.variant().name());
        row.put(
                "placed",
                planned.plan().placed().stream()
                        .map(p -> row(p, margins, words))
                        .toList());
        row.put(
                "unplaced",
                planned.plan().unplaced().stream().map(u -> row(u, margins)).toList());
        row.put("quietS", JsonOut.thousandths(planned.plan().quietS()));
        row.put("talkS", JsonOut.thousandths(planned.plan().talkS()));
        return row;
    }

    private static Map<String, Object> row(Placed placed, Margins margins, ShowLookup words) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("remark", placed.remarkId());
        row.put("figure", placed.figureId());
        row.put("kind", placed.kind());
        row.put("form", placed.form());
        row.put("startS", JsonOut.thousandths(placed.startS()));
        row.put("endS", JsonOut.thousandths(placed.endS()));
        row.put("goodDay", placed.tight());
        Remark remark = words.remark(placed.remarkId()).orElseThrow();
        row.put("draft", remark.draft());
        row.put("speaker", words.other(remark).orElse(null));
        margins.whyShort(placed).ifPresent(why -> row.put("reason", why));
        return row;
    }

    private static Map<String, Object> row(Unplaced unplaced, Margins margins) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("remark", unplaced.remarkId());
        row.put("why", unplaced.why());
        row.put("reason", unplaced.reason());
        row.put("neededS", JsonOut.thousandths(unplaced.neededS()));
        row.put("thereS", JsonOut.thousandths(unplaced.thereS()));
        row.put("goodDay", margins.fitsOnAGoodDay(unplaced));
        return row;
    }
}
