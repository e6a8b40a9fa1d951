package crowdline.show;

import crowdline.show.bounds.Most;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What is said on an occasion that nobody can plan, in the organiser's own words: the weather stops the show, a child is
 * lost. Words in square brackets are blanks: they say what must be put in their place before anybody reads it out.
 *
 * @param id stable, unique within the show
 * @param occasion when it is said, such as "Lost child"
 * @param words what to say, paragraph by paragraph
 * @param agreedWith who agreed these words, such as "display director, 2 May"; null if nobody has yet
 */
public record Announcement(
        String id,
        String occasion,
        List<String> words,
        @Nullable String agreedWith) {
    private static final Pattern CLOSED = Pattern.compile("\\[([^\\[\\]]+)\\]");
    /** Also one that nobody closed, which goes to the end: nobody may read out what somebody meant to be filled in. */
    private static final Pattern BLANK = Pattern.compile("\\[(?:([^\\[\\]]+)(?:\\]|$|(?=\\[))|\\])");

    /** What a blank asks for that does not say it. */
    private static final String UNNAMED = "what belongs here";

    public Announcement {
        Most.mustBeText("announcement id", id);
        Most.mustBeText("occasion of an announcement", occasion);
        Most.WORDS.must(words);
        words = List.copyOf(words);
        if (words.isEmpty()) {
            throw new IllegalArgumentException("the announcement has no words; it needs the organiser's text");
        }
        words.forEach(paragraph -> Most.mustBeText("paragraph of an announcement", paragraph));
        if (agreedWith != null) {
            Most.mustBeText("agreement of an announcement", agreedWith);
        }
    }

    /** Whether somebody has agreed these words. */
    public boolean isAgreed() {
        return agreedWith != null && !agreedWith.isBlank();
    }

    /** Who agreed these words, or that nobody has, for a page. */
    public String agreement() {
        return Incident.agreement(isAgreed() ? agreedWith : null);
    }

    /** Whether a square bracket belongs to no other, or nothing is between two. */
    public boolean hasLooseBracket() {
        return words.stream()
                .map(paragraph -> CLOSED.matcher(paragraph).replaceAll(""))
                .anyMatch(rest -> rest.contains("[") || rest.contains("]"));
    }

    /** Whether anything must be put in that is not among these. */
    public boolean lacks(Map<String, String> filled) {
        return blanks().stream()
                .anyMatch(blank -> filled.getOrDefault(blank, "").isBlank());
    }

    /** What must be put in before it is read out, in the order it comes, each once; without the brackets. */
    public List<String> blanks() {
        return words.stream()
                .flatMap(paragraph -> BLANK.matcher(paragraph).results())
                .map(Announcement::asks)
                .distinct()
                .toList();
    }

    /**
     * The words with blanks filled in.
     *
     * @param filled what is said for each blank; a blank that is not among them, or has nothing, stays in its brackets
     */
    public List<String> words(Map<String, String> filled) {
        return words.stream()
                .map(paragraph -> BLANK.matcher(paragraph).replaceAll(found -> put(found, filled)))
                .toList();
    }

    private static String asks(MatchResult found) {
        String asked = found.group(1) == null ? "" : found.group(1).strip();
        return asked.isEmpty() ? UNNAMED : asked;
    }

    private static String put(MatchResult found, Map<String, String> filled) {
        String said = filled.getOrDefault(asks(found), "");
        return Matcher.quoteReplacement(said.isBlank() ? found.group() : said.strip());
    }
}
