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
            find act DIR LIST SEEDS...   flies the act of a list, its first line the aircraft, as the hard trial does
            find find DIR [v]            finds the figures of what is in the folder; v tells each""";

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
                        Arrays.stream(args).skip(3).map(Long::valueOf).toList();
                int n = 0;
                for (FlightOf f : FindFlights.of(list, seeds)) {
                    f.write(dir.resolve(list.getFileName() + "-" + n++ + ".csv"));
                }
            }
            default -> find(dir, args.length > 2);
        }
    }

    private static void find(Path dir, boolean tells) throws IOException {
        Map<String, FindScore> scores = new LinkedHashMap<>();
        Map<String, FlightFigures> finders = new TreeMap<>();
        FindScore all = new FindScore();
        List<Path> files;
        try (Stream<Path> list = Files.list(dir)) {
            files = list.sorted().toList();
        }
        for (Path file : files) {
            FlightOf flight = FlightOf.read(file);
            FlightFigures figures =
                    finders.computeIfAbsent(flight.kind(), k -> new FlightFigures(catalogue(), trial(k)));
            List<Found> found = figures.in(flight.log());
            String group = flight.name().startsWith("point mass")
                    ? "mass " + flight.kind()
                    : flight.name().split(",", 2)[0];
            for (FindScore score : List.of(all, scores.computeIfAbsent(group, k -> new FindScore()))) {
                score.add(flight, found);
            }
            if (tells) {
                System.out.println(flight.name());
                System.out.print(FindScore.told(flight, found));
            }
        }
        scores.forEach((name, score) -> System.out.println(score.line(name)));
        System.out.println(all.line("all"));
        System.out.print(all.wrongs());
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
