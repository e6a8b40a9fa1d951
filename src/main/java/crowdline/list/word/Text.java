package crowdline.list.word;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/**
 * A text as it was written, and the same in small letters without accents; both are equally long.
 *
 * @param written as it was written
 * @param folded as it is compared
 * @param columns what stands above its cells, if it is a table
 * @param ranks where numbers begin that say who flies
 * @param speeds the unit of speeds that stand without one
 * @param names what the show calls its figures
 * @param hasSmallLetters whether not all of it is in capitals
 */
public record Text(
        String written,
        String folded,
        Columns columns,
        Set<Integer> ranks,
        SpeedUnit speeds,
        List<Called> names,
        boolean hasSmallLetters) {
    /** Struck out, or an empty line of a letter that was answered. */
    private static final Pattern NOT_READ = Pattern.compile(
            "~~[^~\\n]{1,80}~~|(?m)^[> \\t]*>[> \\t]*$|(?i)[\\[(](?:crossed|struck|scored|scratched|scribbled|rubbed) (?:out|through)[:;,]? [^\\])\\n]{1,80}[\\])]");

    /** What makes a key of the digit ahead of it. */
    private static final Pattern KEYCAP = Pattern.compile("(?<=\\d)\\ufe0f?\\u20e3");

    private static final Pattern LINE_END = Pattern.compile("\\n[> \\t]*");

    /**
     * A text as it is read.
     *
     * @param isWord whether letters are a word that somebody writes
     */
    public static Text of(String written, Predicate<String> isWord) {
        String read = Pages.without(Scanned.withoutThrust(written, Words.folded(written)));
        String folded = KEYCAP.matcher(Hyphens.joined(written, read, isWord))
                .replaceAll(found -> found.end() - found.start() > 1 ? ") " : ")");
        folded = Axes.mended(Arrows.mended(Commas.mended(Scanned.mended(folded))));
        folded = Idioms.without(Calls.without(Spoken.without(withoutWhatIsNotRead(folded))));
        return new Text(
                written,
                folded,
                Columns.of(folded),
                Ranks.of(folded),
                SpeedUnit.of(folded),
                List.of(),
                written.chars().anyMatch(Character::isLowerCase));
    }

    /** The same, as long as it is, with the lines joined that a sentence goes over, those of an answered letter too. */
    public String joined() {
        return LINE_END.matcher(folded).replaceAll(end -> " ".repeat(end.group().length()));
    }

    /** A pattern for what is {@link #joined}: each space in it stands for one or more, as where a line ended in a quoted letter. */
    public static Pattern across(String regex) {
        return Pattern.compile(regex.replaceAll(" (?![?*+{])", " +"));
    }

    /** "~~Stall turn~~" is struck out: nobody reads it, nor a line of ">" alone, and everything else stays where it is. */
    private static String withoutWhatIsNotRead(String folded) {
        return NOT_READ.matcher(folded)
                .replaceAll(found -> " ".repeat(found.group().length()));
    }

    /** The same with those of its show names that say what they are; their words name no figure. */
    public Text naming(Predicate<Called> isOne) {
        List<Called> meant = Called.in(written).stream().filter(isOne).toList();
        return new Text(written, folded, columns, ranks, speeds, meant, hasSmallLetters);
    }

    /** The words of a stretch, with the units that the heads of columns give. */
    public List<Word> words(int from, int to) {
        List<Word> words = known(from, to);
        return names.isEmpty()
                ? words
                : words.stream()
                        .filter(word -> names.stream().noneMatch(name -> name.holds(word.start())))
                        .toList();
    }

    private List<Word> known(int from, int to) {
        List<Word> words = speeds.with(columns.with(Words.of(folded, from, to)), folded);
        return ranks.isEmpty()
                ? words
                : words.stream().filter(word -> !ranks.contains(word.start())).toList();
    }

    /** Whether the words from a place on stand in a table's column of remarks. */
    public boolean isRemark(int at) {
        int words = at;
        while (words < folded.length() && folded.charAt(words) == ' ') {
            words++;
        }
        return columns.isRemark(words);
    }

    /** Whether a place stands in the head of a table. */
    public boolean isTableHead(int at) {
        return columns.isHead(at);
    }

    /** How far in the line begins that a place stands in, in letters. */
    public int indent(int at) {
        int begin = folded.lastIndexOf('\n', at - 1) + 1;
        int words = begin;
        while (words < at && Character.isWhitespace(folded.charAt(words))) {
            words++;
        }
        return words - begin;
    }

    /** A stretch as it was written, without spaces and commas around it. */
    public String piece(int from, int to) {
        int first = from;
        int last = to;
        while (first < last && isEdge(written.charAt(first))) {
            first++;
        }
        while (last > first && isEdge(written.charAt(last - 1))) {
            last--;
        }
        return written.substring(first, last);
    }

    private static boolean isEdge(char c) {
        return !Character.isLetterOrDigit(c) && "()'\"½¼¾°[]{}!?:@~’′″“”".indexOf(c) < 0;
    }
}
