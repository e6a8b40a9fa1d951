package crowdline.list.word;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers that say who flies: "Tusker 1" and "Tusker 2", "number 3". */
final class Ranks {
    private static final Pattern RANK =
            Pattern.compile("(?<!\\p{L})(?<name>\\p{L}{2,14})\\.? (?<rank>[1-9])(?![\\d.:/]|,\\d|"
                    + " ?(?:x|kts?|ft|m|km|s|secs?|mins?|g|turns?|points?|pt|rolls?|times|of|and"
                    + " a|1/|[%°'\"½])(?!\\p{L}))");

    /** One is somebody's rank wherever it stands behind these. */
    private static final Set<String> MEMBERS = Set.of("no", "nr", "number", "wingman", "singleton");

    private Ranks() {}

    /** Where such numbers begin, in a text that is {@link Words#folded}. */
    static Set<Integer> of(String folded) {
        Map<String, Set<String>> ranks = new HashMap<>();
        Matcher found = RANK.matcher(folded);
        while (found.find()) {
            if (isName(found.group("name"))) {
                ranks.computeIfAbsent(found.group("name"), n -> new HashSet<>()).add(found.group("rank"));
            }
        }
        Set<Integer> starts = new HashSet<>();
        found.reset();
        while (found.find()) {
            String name = found.group("name");
            if (MEMBERS.contains(name) || ranks.getOrDefault(name, Set.of()).size() > 1) {
                starts.add(found.start("rank"));
            }
        }
        return starts;
    }

    /** Whether a word may be somebody's callsign: not one that says anything of a list or a figure. */
    private static boolean isName(String word) {
        return !Manner.isAny(Words.plain(word))
                && !Manner.isAny(word)
                && !Words.spellings().contains(word);
    }
}
