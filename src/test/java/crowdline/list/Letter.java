package crowdline.list;

import crowdline.list.about.AboutAct;
import crowdline.list.line.FigureList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A whole letter and what is true of it. In a file it ends with a line of who flies it, when and how long ("@ pilot … ;
 * slot … ; minutes …"), and one of what is flown ("= loop, entry 130 ; landing").
 *
 * @param text the letter
 * @param about who flies, when and how long, by these names; what is not said is not in it
 * @param figures what is flown, in order, in the words of {@link Spelt#said}
 */
record Letter(String text, Map<String, String> about, List<String> figures) {
    private static final String OTHER = "\"";
    private static final List<String> ABOUT = List.of("pilot", "slot", "minutes");
    private static final double SAME_NUMBER = 1;

    /**
     * How well letters were read. Fields are those of the figures that were found; what was read of who, when and how
     * long though nothing is said of it is made up.
     */
    record Score(
            int figures, int found, int tooMany, int fields, int fieldsRight, int about, int aboutRight, int madeUp) {
        Score and(Score o) {
            return new Score(
                    figures + o.figures,
                    found + o.found,
                    tooMany + o.tooMany,
                    fields + o.fields,
                    fieldsRight + o.fieldsRight,
                    about + o.about,
                    aboutRight + o.aboutRight,
                    madeUp + o.madeUp);
        }
    }

    static List<Letter> of(String file) {
        return of(Spelt.written(file));
    }

    static List<Letter> of(List<String> rows) {
        List<Letter> letters = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        Map<String, String> about = Map.of();
        for (String row : rows) {
            if (row.startsWith("= ")) {
                letters.add(new Letter(
                        text.toString(),
                        about,
                        Stream.of(row.substring(2).strip().split(" ; "))
                                .filter(figure -> !figure.isEmpty())
                                .toList()));
                text.setLength(0);
            } else if (isAbout(row)) {
                about = Stream.of(row.substring(1).strip().split(" ; "))
                        .map(told -> told.split(" ", 2))
                        .filter(told -> told.length == 2)
                        .collect(Collectors.toMap(told -> told[0], told -> told[1]));
            } else if (!row.startsWith("# ")) {
                text.append(row.equals(".") ? "" : row).append('\n');
            }
        }
        return letters;
    }

    /** Whether a row says who flies a letter, when and how long. */
    static boolean isAbout(String row) {
        return row.matches("@ ?(?:(?:pilot|slot|minutes|kind) .*)?");
    }

    Score read(ListReader reader) {
        FigureList list = reader.read(text);
        List<String> said = list.lines().stream().map(Spelt::said).toList();
        List<int[]> pairs = pairs(said);
        int fields = 0;
        int right = 0;
        for (int[] pair : pairs) {
            Map<String, String> told = fields(figures.get(pair[0]));
            Map<String, String> read = fields(said.get(pair[1]));
            fields += told.size();
            right += same(told, read);
        }
        Map<String, String> read = about(list);
        return new Score(
                figures.size(),
                pairs.size(),
                said.size() - pairs.size(),
                fields,
                right,
                (int) ABOUT.stream().filter(about::containsKey).count(),
                (int) ABOUT.stream()
                        .filter(what -> about.containsKey(what) && Objects.equals(about.get(what), read.get(what)))
                        .count(),
                (int) ABOUT.stream()
                        .filter(what -> !about.containsKey(what) && read.containsKey(what))
                        .count());
    }

    static Map<String, String> about(FigureList list) {
        AboutAct about = AboutAct.of(list);
        Map<String, String> read = new HashMap<>();
        if (about.pilot() != null) {
            read.put("pilot", about.pilot());
        }
        if (about.begins() != null) {
            read.put("slot", about.begins().toString());
        }
        if (about.minutes() != null) {
            read.put("minutes", String.valueOf(about.minutes()).replaceFirst("\\.0$", ""));
        }
        return read;
    }

    /** Which figure was read as which line, in order: as many as can be, and of those the most alike. */
    List<int[]> pairs(List<String> said) {
        int[][] most = new int[figures.size() + 1][said.size() + 1];
        for (int i = figures.size() - 1; i >= 0; i--) {
            for (int j = said.size() - 1; j >= 0; j--) {
                int both = alike(figures.get(i), said.get(j));
                most[i][j] =
                        Math.max(both == 0 ? 0 : most[i + 1][j + 1] + both, Math.max(most[i + 1][j], most[i][j + 1]));
            }
        }
        List<int[]> pairs = new ArrayList<>();
        int i = 0;
        int j = 0;
        while (i < figures.size() && j < said.size()) {
            int both = alike(figures.get(i), said.get(j));
            if (both > 0 && most[i][j] == most[i + 1][j + 1] + both) {
                pairs.add(new int[] {i++, j++});
            } else if (most[i][j] == most[i + 1][j]) {
                i++;
            } else {
                j++;
            }
        }
        return pairs;
    }

    private static int alike(String told, String read) {
        boolean sameFigure = figure(told).equals(figure(read));
        return sameFigure ? 1_000 + same(fields(told), fields(read)) : 0;
    }

    static String figure(String said) {
        return said.startsWith(OTHER) ? OTHER : said.replaceFirst("(?s), .*", "");
    }

    /** "loop, entry 130, place centre" without its figure, its note and whether it is sure. */
    static Map<String, String> fields(String said) {
        String line = said.replace('\n', ' ');
        String told = line.startsWith(OTHER) ? line.replaceFirst("\"[^\"]*\"", "") : line.replaceFirst("^[^,]*", "");
        return Arrays.stream(told.replaceAll(", note \".*?\"(?=, unsure|$)|, (?:unsure|choices).*", "")
                        .split(", "))
                .filter(part -> part.contains(" "))
                .map(part -> part.strip().split(" ", 2))
                .filter(part -> part.length == 2)
                .collect(Collectors.toMap(part -> part[0], part -> part[1], (first, second) -> first));
    }

    private static int same(Map<String, String> told, Map<String, String> read) {
        return (int) told.entrySet().stream()
                .filter(field -> isSame(field.getValue(), read.getOrDefault(field.getKey(), "")))
                .count();
    }

    private static boolean isSame(String told, String read) {
        boolean areNumbers = told.matches("[\\d.]+") && read.matches("[\\d.]+");
        return (areNumbers && !told.contains("."))
                ? Math.abs(Double.parseDouble(told) - Double.parseDouble(read)) <= SAME_NUMBER && isNear(told, read)
                : told.equals(read);
    }

    /** Of small numbers none is near another: two turns are not three. */
    private static boolean isNear(String told, String read) {
        return Double.parseDouble(told) > 30 || told.equals(read);
    }

    /** Score of all letters. */
    static Score read(List<Letter> letters, ListReader reader) {
        return IntStream.range(0, letters.size())
                .mapToObj(i -> letters.get(i).read(reader))
                .reduce(new Score(0, 0, 0, 0, 0, 0, 0, 0), Score::and);
    }
}
