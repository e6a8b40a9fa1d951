package crowdline.follow;

import crowdline.arrange.ShowArranging;
import crowdline.list.ListReader;
import crowdline.show.Show;
import crowdline.show.Venue;
import crowdline.show.aircraft.Sliders;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Figure;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.KindsFile;
import crowdline.telemetry.Reading;
import crowdline.trace.FlightOf;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

/** Flights of an act that is arranged from a list, as the trials fly them. */
public final class FindFlights {
    private FindFlights() {}

    /** The words of the scenarios that are flown. */
    private static final List<String> SCENARIOS =
            List.of("10 %, 5 Hz", "10 %, 1 Hz", "10 %, 10 Hz, heights 50 m off", "15 %, untold wind", "15 %, a third");

    /**
     * Flies the act of a list.
     *
     * @param list a file whose first line names the aircraft and whose others are what it flies
     * @param world hard, others or elsewhere, as the trial has it
     * @throws IllegalArgumentException if no world is called so
     */
    public static List<FlightOf> of(Path list, String world, List<Long> seeds) {
        List<Scenario> scenarios = switch (world) {
            case "hard" -> Scenario.inAHardSky();
            case "others" -> Scenario.byOthers();
            case "elsewhere" -> Scenario.elsewhere();
            default -> throw new IllegalArgumentException("no world is called " + world);
        };
        try {
            List<String> lines = Files.readAllLines(list);
            String kind = lines.get(0).substring("aircraft: ".length());
            Catalogue catalogue = CatalogueFile.shipped();
            Show empty = ShowArranging.empty("trial", LocalDate.of(2031, 6, 1), ZoneOffset.UTC, null)
                    .withVenue(new Venue("here", null, null, null, 90.0, null, ZoneOffset.UTC, Venue.Limits.NONE));
            ShowArranging.Made made = new ShowArranging(catalogue)
                    .add(
                            empty,
                            new ListReader(catalogue).read(String.join("\n", lines.subList(1, lines.size()))),
                            id -> KindsFile.shipped().counted(kind).kind().airframe(id, kind, Sliders.TYPICAL),
                            new ShowArranging.About("act", null, LocalTime.NOON, null));
            Display display = new Display(made.show(), catalogue, made.act(), "full");
            List<FlightOf> flights = new ArrayList<>();
            for (Scenario scenario : scenarios) {
                if (scenario.change() != Scenario.Change.NONE
                        || (world.equals("hard") && SCENARIOS.stream().noneMatch(scenario.name()::startsWith))) {
                    continue;
                }
                for (long seed : seeds) {
                    Truth truth = scenario.fly(display, seed);
                    List<Reading> log = scenario.receive(truth, seed);
                    flights.add(new FlightOf(
                            list.getFileName() + ", " + world + ", " + scenario.name() + ", " + seed,
                            kind,
                            log,
                            figures(made, truth)));
                }
            }
            return flights;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<FlightOf.Flown> figures(ShowArranging.Made made, Truth truth) {
        List<Figure> figures = made.act().figures();
        List<FlightOf.Flown> flown = new ArrayList<>();
        for (Truth.Flown f : truth.flown) {
            Figure figure = figures.get(f.figure());
            String name = figure.transit() ? "way" : String.valueOf(figure.figure());
            flown.add(new FlightOf.Flown(name, f.startS(), f.endS()));
        }
        return flown;
    }
}
