package crowdline.trace;

import crowdline.flight.FigureTrial;
import crowdline.flight.air.Air;
import crowdline.follow.FindFlights;
import crowdline.show.DayAir;
import crowdline.show.Venue;
import crowdline.show.aircraft.Sliders;
import crowdline.show.catalogue.Catalogue;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.KindsFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Finds the figures of many flights and prints how many were named. What is flown is kept in a folder, so that two versions can
 * be compared on the same flights.
 */
public final class FindTrial {
    private static final String USAGE = """
            find mass DIR FROM TO        flies a point mass with the seeds of a range
            find act DIR LIST WORLD SEEDS...
                                         flies the act of a list, its first line the aircraft, as a trial does: hard, others or elsewhere
            find find DIR [v]            finds the figures of what is in the folder; v tells each
            find save DIR FILE           the same, and writes down how each flight was found""";

    private FindTrial() {}

    public static void main(String[] args) throws IOException {
        if (args.length < 2) {
            System.err.println(USAGE);
            System.exit(2);
        }
        Path dir = Path.of(args[1]);
        Files.createDirectories(dir);
        switch (args[0]) {
            case "mass" -> {
                for (long seed = Long.parseLong(args[2]); seed <= Long.parseLong(args[3]); seed++) {
                    PointMassFlights.of(seed).write(dir.resolve(String.format(Locale.ROOT, "mass-%04d.csv", seed)));
                }
            }
            case "act" -> {
                Path list = Path.of(args[2]);
                List<Long> seeds =
                        Arrays.stream(args).skip(4).map(Long::valueOf).toList();
                int n = 0;
                for (FlightOf f : FindFlights.of(list, args[3], seeds)) {
                    f.write(dir.resolve(list.getFileName() + "-" + args[3] + "-" + n++ + ".csv"));
                }
            }
            case "save" -> Files.write(Path.of(args[2]), find(dir, false));
            default -> find(dir, args.length > 2);
        }
    }

    private static List<String> find(Path dir, boolean tells) throws IOException {
        Map<String, FindScore> scores = new LinkedHashMap<>();
        Map<String, FlightFigures> finders = new TreeMap<>();
        FindScore all = new FindScore();
        SureScore sure = new SureScore();
        List<String> rows = new ArrayList<>();
        List<Path> files;
        try (Stream<Path> list = Files.list(dir)) {
            files = list.sorted().toList();
        }
        for (Path file : files) {
            FlightOf flight = FlightOf.read(file);
            FlightFigures figures =
                    finders.computeIfAbsent(flight.kind(), k -> new FlightFigures(catalogue(), trial(k)));
            List<Found> found = figures.in(flight.log());
            String[] words = flight.name().split(", ", 3);
            boolean mass = words[0].startsWith("point mass");
            String act = mass ? "mass " + flight.kind() : words[0];
            String world = mass ? "point mass" : words[1];
            FindScore alone = new FindScore();
            for (FindScore score : List.of(
                    alone,
                    all,
                    scores.computeIfAbsent(act, k -> new FindScore()),
                    scores.computeIfAbsent("all, " + world, k -> new FindScore()))) {
                score.add(flight, found);
            }
            sure.add(flight, found);
            rows.add(alone.row(world + "/" + flight.name()));
            if (tells) {
                System.out.println(flight.name());
                System.out.print(FindScore.told(flight, found));
            }
        }
        scores.forEach((name, score) -> System.out.println(score.line(name)));
        System.out.println(all.line("all"));
        System.out.print(sure.table());
        System.out.print(all.wrongs());
        return rows;
    }

    static Catalogue catalogue() {
        return CatalogueFile.shipped();
    }

    static FigureTrial trial(String kind) {
        Venue venue = new Venue("here", null, null, null, null, null, ZoneOffset.UTC, Venue.Limits.NONE);
        return new FigureTrial(
                KindsFile.shipped().counted(kind).kind().airframe("a", kind, Sliders.TYPICAL),
                Air.of(DayAir.STANDARD, venue));
    }
}
