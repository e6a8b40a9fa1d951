package crowdline.speech.plain;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The words that most listeners know: about 44,800 forms of SCOWL, sizes 10 to 40 (Kevin Atkinson; the licence lies beside
 * the list), where a spelling checker's usual list has size 60. Two known words written together are known too. Reading
 * the list takes a few hundredths of a second.
 */
public final class CommonVocabulary {

    private static final String LIST = "/crowdline/common-words.txt";

    /** Shorter halves make anything a compound. Tuned. */
    private static final int SHORTEST_HALF = 3;

    private static final Pattern ENDED =
            Pattern.compile("(?:un|re)?([a-z]{3,}?)(?:ers?|ing|ed|ly|ness|less|ful|y|ish)");

    /** Sorted words of a to z, each with a line end. */
    private final byte[] list;

    public CommonVocabulary() {
        try (InputStream in = Objects.requireNonNull(CommonVocabulary.class.getResourceAsStream(LIST), LIST)) {
            list = in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("the list of common words cannot be read", e);
        }
    }

    /** Whether most listeners know a word; an owner's "'s" is passed over, and other letters than a to z are not judged. */
    public boolean has(String word) {
        String lower = word.toLowerCase(Locale.UK).replace('’', '\'');
        String plain = lower.replaceFirst("'s$|(?<=s)'$", "");
        if (!plain.chars().allMatch(c -> c >= 'a' && c <= 'z')) {
            return true;
        }
        return isListed(plain) || isListed(plain + "s") || isMadeOfListed(plain) || isCompound(plain);
    }

    /** "decker", "rollers", "wobbliness": who knows the stem knows the word. */
    private boolean isMadeOfListed(String word) {
        Matcher stem = ENDED.matcher(word);
        if (!stem.matches()) {
            return false;
        }
        String base = stem.group(1);
        return isListed(base)
                || isListed(base + "e")
                || (base.endsWith("i") && isListed(base.substring(0, base.length() - 1) + "y"));
    }

    private boolean isCompound(String word) {
        for (int at = SHORTEST_HALF; at <= word.length() - SHORTEST_HALF; at++) {
            if (isListed(word.substring(0, at)) && isListed(word.substring(at))) {
                return true;
            }
        }
        return false;
    }

    private boolean isListed(String word) {
        byte[] sought = word.getBytes(StandardCharsets.US_ASCII);
        int low = 0;
        int high = list.length;
        while (low < high) {
            int start = lineStart((low + high) >>> 1);
            int order = order(start, sought);
            if (order == 0) {
                return true;
            }
            if (order < 0) {
                low = lineEnd(start) + 1;
            } else {
                high = start;
            }
        }
        return false;
    }

    /** The line that begins here against the word: below, equal, above. */
    private int order(int start, byte[] sought) {
        for (int i = 0; i < sought.length; i++) {
            int difference = list[start + i] - sought[i];
            if (difference != 0) {
                return difference;
            }
        }
        return list[start + sought.length] == '\n' ? 0 : 1;
    }

    private int lineStart(int at) {
        int start = at;
        while (start > 0 && list[start - 1] != '\n') {
            start--;
        }
        return start;
    }

    private int lineEnd(int from) {
        int end = from;
        while (list[end] != '\n') {
            end++;
        }
        return end;
    }
}
