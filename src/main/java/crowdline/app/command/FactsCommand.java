package crowdline.app.command;

import crowdline.app.shell.Complaints;
import crowdline.app.shell.ExitCode;
import crowdline.app.shell.Terminal;
import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.aircraft.Airframe;
import crowdline.show.catalogue.Catalogue;
import crowdline.sight.Daylight;
import crowdline.sight.FigureSight;
import crowdline.sight.fact.CrowdFact;
import crowdline.sight.fact.CrowdFacts;
import crowdline.sight.fact.UnmadeFact;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.json.JsonOut;
import crowdline.storage.show.CatalogueFile;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells what a crowd can picture of the acts of a show. */
@Command(
        name = "facts",
        mixinStandardHelpOptions = true,
        description =
                "Works out numbers a crowd can picture, where to look for each figure, where the sun is and how late sound arrives.",
        footer = {
            "Ends with 0 if all went well, 1 if a figure cannot be flown and so has no facts, 2 if the file cannot be"
                    + " used.",
            CrowdFacts.CAUTION
        })
public final class FactsCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(paramLabel = "SHOW", description = "The show file.")
    private @Nullable Path file;

    @Mixin
    private final ActChoice choice = new ActChoice();

    @Option(
            names = "--at",
            paramLabel = "ISO-TIME",
            description = "When each act begins, such as 2027-06-12T14:30 by the venue's clock, or with its offset;"
                    + " the planned slot if left out.")
    private @Nullable String at;

    @Option(names = "--json", description = "Print the facts as JSON.")
    private boolean json;

    /**
     * One act with what was found for it.
     *
     * @param begins when it begins, by the venue's clock
     */
    record Told(
            Act act,
            Flight flight,
            ZonedDateTime begins,
            Daylight daylight,
            CrowdFacts found,
            List<FigureSight> sights) {

        List<CrowdFact> factsOf(@Nullable String figureId) {
            return found.facts().stream()
                    .filter(fact -> Objects.equals(fact.figureId(), figureId))
                    .toList();
        }

        List<String> unmadeOf(@Nullable String figureId) {
            return found.unmade().stream()
                    .filter(unmade -> Objects.equals(unmade.figureId(), figureId))
                    .map(UnmadeFact::why)
                    .toList();
        }

        @Nullable
        FigureSight sightOf(String figureId) {
            return sights.stream()
                    .filter(sight -> sight.figureId().equals(figureId))
                    .findFirst()
                    .orElse(null);
        }

        boolean complete() {
            return flight.figures().stream().allMatch(FigureFlight::completed);
        }
    }

    public FactsCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws ShowFileException {
        Show show = new UsableShow(terminal).read(Objects.requireNonNull(file));
        List<Act> acts = choice.of(show);
        List<Told> told = new ArrayList<>();
        Catalogue catalogue = CatalogueFile.shipped();
        for (Act act : acts) {
            told.add(tell(show, catalogue, act));
        }
        if (json) {
            terminal.json(JsonOut.of(
                    Map.of("acts", told.stream().map(FactsCommand::row).toList())));
        } else {
            show.leftOut().ifPresent(said -> terminal.line("Note: " + said + "."));
            told.forEach(t -> FactTable.lines(t).forEach(terminal::line));
            terminal.line(CrowdFacts.CAUTION);
        }
        return told.stream().allMatch(Told::complete) ? ExitCode.FINE : ExitCode.BLOCKED;
    }

    private Told tell(Show show, Catalogue catalogue, Act act) throws ShowFileException {
        Variant variant = choice.variant(act);
        if (!show.canBePredicted(act)) {
            throw Complaints.notPredicted(show, act);
        }
        Flight flight = new Predictor(show, catalogue, act, variant).predict();
        ZonedDateTime begins = begins(show, act);
        Optional<Airframe> airframe = show.airframe(act.airframe());
        return new Told(
                act,
                flight,
                begins,
                Daylight.of(show.venue(), begins.toLocalDate()),
                airframe.map(a -> CrowdFacts.of(show, a, flight)).orElse(CrowdFacts.NONE),
                airframe.map(a -> FigureSight.of(show, a, flight, begins.toInstant()))
                        .orElse(List.of()));
    }

    private ZonedDateTime begins(Show show, Act act) throws ShowFileException {
        String given = at;
        if (given == null) {
            return show.date().atTime(act.slotStart()).atZone(show.venue().timeZone());
        }
        try {
            return (ZonedDateTime) DateTimeFormatter.ISO_DATE_TIME.parseBest(
                    given,
                    time -> ZonedDateTime.from(time)
                            .withZoneSameInstant(show.venue().timeZone()),
                    time -> LocalDateTime.from(time).atZone(show.venue().timeZone()));
        } catch (DateTimeParseException e) {
            throw new ShowFileException(
                    "--at is " + given + "; it must be a day and a time such as 2027-06-12T14:30, by"
                            + " the venue's clock, or 2027-06-12T13:30Z");
        }
    }

    private static Map<String, Object> row(Told told) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("id", told.act().id());
        row.put("variant", told.flight().variant());
        row.put("begins", clock(told.begins()));
        row.put("daylight", row(told.daylight()));
        row.put("facts", told.factsOf(null).stream().map(FactsCommand::row).toList());
        List<Object> figures = new ArrayList<>();
        for (FigureFlight f : told.flight().figures()) {
            Map<String, @Nullable Object> figure = new LinkedHashMap<>();
            figure.put("id", f.figureId());
            figure.put("name", f.name());
            figure.put(
                    "facts",
                    told.factsOf(f.figureId()).stream().map(FactsCommand::row).toList());
            FigureSight sight = told.sightOf(f.figureId());
            figure.put("start", sight == null ? null : row(sight.start()));
            figure.put("highest", sight == null ? null : row(sight.highest()));
            figure.put("withoutFact", told.unmadeOf(f.figureId()));
            figures.add(figure);
        }
        row.put("figures", figures);
        row.put("withoutFact", told.unmadeOf(null));
        return row;
    }

    private static Map<String, @Nullable Object> row(Daylight day) {
        Map<String, @Nullable Object> row = new LinkedHashMap<>();
        row.put("dawn", clock(day.dawn()));
        row.put("sunrise", clock(day.sunrise()));
        row.put("sunset", clock(day.sunset()));
        row.put("dusk", clock(day.dusk()));
        return row;
    }

    private static @Nullable String clock(@Nullable ZonedDateTime time) {
        return time == null ? null : DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(time);
    }

    private static Map<String, Object> row(CrowdFact fact) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("id", fact.id());
        row.put("kind", fact.kind());
        row.put("number", JsonOut.thousandths(fact.number()));
        row.put("unit", fact.unit());
        row.put("rounded", JsonOut.thousandths(fact.rounded()));
        row.put("text", fact.text());
        row.put("shortText", fact.shortText());
        row.put("telling", JsonOut.thousandths(fact.telling()));
        return row;
    }

    private static Map<String, @Nullable Object> row(FigureSight.Glimpse seen) {
        Map<String, @Nullable Object> row = new LinkedHashMap<>();
        row.put("atS", JsonOut.thousandths(seen.tS()));
        row.put("look", seen.look().words());
        row.put("clock", seen.look().clock());
        row.put("rightDeg", JsonOut.thousandths(seen.look().rightDeg()));
        row.put("upDeg", JsonOut.thousandths(seen.look().upDeg()));
        row.put("slantM", JsonOut.thousandths(seen.look().slantM()));
        row.put("soundDelayS", JsonOut.thousandths(seen.soundDelayS()));
        row.put("sizeDeg", JsonOut.thousandths(seen.size().degrees()));
        row.put("sizeLike", seen.size().like());
        row.put(
                "sunDeg",
                seen.glare() == null ? null : JsonOut.thousandths(seen.glare().degrees()));
        row.put("intoSun", seen.glare() != null && seen.glare().intoSun());
        return row;
    }
}
