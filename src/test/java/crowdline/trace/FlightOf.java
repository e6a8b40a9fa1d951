package crowdline.trace;

import crowdline.telemetry.Reading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A flight, and what was flown in it.
 *
 * @param name what it is
 * @param kind of aircraft
 * @param log what a receiver heard of it
 * @param flown what was flown, in order, with ways between
 */
public record FlightOf(String name, String kind, List<Reading> log, List<Flown> flown) {
    /**
     * One thing that was flown.
     *
     * @param figure the catalogue's name, or "way"
     */
    public record Flown(String figure, double startS, double endS) {}

    void write(Path file) throws IOException {
        List<String> lines = new ArrayList<>(List.of(name, kind));
        for (Flown f : flown) {
            lines.add(String.format(Locale.ROOT, "%s;%.2f;%.2f", f.figure, f.startS, f.endS));
        }
        lines.add("");
        for (Reading r : log) {
            lines.add(String.format(Locale.ROOT, "%.2f;%.2f;%.2f;%.2f", r.tS(), r.alongM(), r.awayM(), r.heightM()));
        }
        Files.write(file, lines);
    }

    static FlightOf read(Path file) throws IOException {
        List<String> lines = Files.readAllLines(file);
        int gap = lines.indexOf("");
        List<Flown> flown = new ArrayList<>();
        for (String line : lines.subList(2, gap)) {
            String[] p = line.split(";", -1);
            flown.add(new Flown(p[0], Double.parseDouble(p[1]), Double.parseDouble(p[2])));
        }
        List<Reading> log = new ArrayList<>();
        for (String line : lines.subList(gap + 1, lines.size())) {
            String[] p = line.split(";", -1);
            log.add(new Reading(
                    Double.parseDouble(p[0]),
                    Double.parseDouble(p[1]),
                    Double.parseDouble(p[2]),
                    Double.parseDouble(p[3]),
                    null,
                    null));
        }
        return new FlightOf(lines.get(0), lines.get(1), log, flown);
    }
}
