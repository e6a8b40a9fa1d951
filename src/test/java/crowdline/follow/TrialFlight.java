package crowdline.follow;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How one flight of a trial was followed. A file of these, a line each, lets a later run be compared flight by flight.
 *
 * @param act its name
 * @param scenario its name
 * @param seed of the flight
 * @param right per cent of the time, the figure said was the one flown
 * @param sureAndWrong per cent of the time
 * @param boundaryS mean error of a boundary as said live, seconds
 * @param lookedBackS the same as found in the log afterwards
 */
record TrialFlight(
        String act,
        String scenario,
        long seed,
        double right,
        double sureAndWrong,
        double boundaryS,
        double lookedBackS) {
    private static final String BETWEEN = "\t";

    static TrialFlight of(String act, Scenario scenario, long seed, Score score) {
        return new TrialFlight(
                act,
                scenario.name(),
                seed,
                100 * score.rightShare(),
                100 * score.sureWrongShare(),
                score.boundaryMeanS(),
                score.lookedBackMeanS());
    }

    static void write(Path file, List<TrialFlight> flights) throws IOException {
        Files.write(file, flights.stream().map(TrialFlight::line).toList());
    }

    static List<TrialFlight> read(Path file) throws IOException {
        try (Stream<String> lines = Files.lines(file)) {
            return lines.map(TrialFlight::parsed).toList();
        }
    }

    private String line() {
        return Stream.of(act, scenario, seed, right, sureAndWrong, boundaryS, lookedBackS)
                .map(String::valueOf)
                .collect(Collectors.joining(BETWEEN));
    }

    private static TrialFlight parsed(String line) {
        String[] part = line.split(BETWEEN, -1);
        return new TrialFlight(
                part[0],
                part[1],
                Long.parseLong(part[2]),
                Double.parseDouble(part[3]),
                Double.parseDouble(part[4]),
                Double.parseDouble(part[5]),
                Double.parseDouble(part[6]));
    }

    boolean isSameFlight(TrialFlight other) {
        return seed == other.seed && act.equals(other.act) && scenario.equals(other.scenario);
    }
}
