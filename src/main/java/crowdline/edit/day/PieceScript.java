package crowdline.edit.day;

import crowdline.show.Piece;
import crowdline.show.Show;
import crowdline.show.Speaker;
import crowdline.show.bounds.Written;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.show.figure.Translation;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The parts of a piece as they are typed, one below the other with an empty line between them. A part may begin with the name of
 * who says it and a colon; after a question stands in square brackets how long its answer takes; a line that begins with the
 * code of a language in square brackets begins the part in that language, with who says it after a comma.
 */
final class PieceScript {
    private static final Pattern ANSWERED =
            Pattern.compile("(?s)(.*\\S)\\s*\\[\\s*(\\d{1,4}(?:[.,]\\d{1,2})?)\\s*s?\\s*\\]");

    /** Of so many characters one may be composed, at most. */
    private static final int LETTERS = 4;

    /** The line that another language begins with: its code, who says it, whether it is older, its words. */
    private static final Pattern OTHER =
            Pattern.compile("(?sm)^[ \\t]*\\[\\s*(?<language>[A-Za-z]{2,3}(?:-[A-Za-z0-9]{2,8}){0,3})\\s*"
                    + "(?:,(?<speaker>[^\\]\\n]*?))?(?<older>;\\s*older[^\\]\\n;]*)?\\](?<words>.*)");

    private final Piece before;
    private final List<String> names;
    /** No name ends later in a part, however its letters are composed. */
    private final int longest;

    private PieceScript(Show show, Piece before) {
        this.before = before;
        names = Stream.concat(
                        show.speakers().all().stream().map(Speaker::name),
                        Stream.concat(
                                Stream.ofNullable(before.speaker()),
                                before.parts().stream().map(Piece.Part::speaker).filter(Objects::nonNull)))
                .distinct()
                .toList();
        longest = LETTERS * names.stream().mapToInt(String::length).max().orElse(0);
    }

    /** The parts as they are typed. */
    static String typed(Piece piece) {
        return piece.parts().stream().map(PieceScript::typed).collect(Collectors.joining("\n\n"));
    }

    private static String typed(Piece.Part part) {
        String speaker = part.speaker();
        Translation other = part.translation();
        return (speaker == null ? "" : speaker + ": ")
                + unbroken(part.text())
                + (part.answerS() == 0 ? "" : " [" + number(part.answerS()) + " s]")
                + (other == null ? "" : "\n" + typed(other));
    }

    private static String typed(Translation other) {
        String speaker = other.speaker();
        return "[" + other.language() + (speaker == null ? "" : ", " + speaker)
                + (other.older() ? "; " + Translation.OLDER : "") + "] " + unbroken(other.text());
    }

    /** An empty line within a part would end it. */
    private static String unbroken(String text) {
        return text.strip().replaceAll("\\R\\s*\\R", "\n");
    }

    private static String number(double value) {
        return value == Math.rint(value)
                ? String.format(Locale.ROOT, "%.0f", value)
                : String.format(Locale.ROOT, "%.1f", value);
    }

    /**
     * What was typed in place of the parts of a piece. Names are those of who speaks at the show, or stand in the piece already.
     *
     * @throws IllegalArgumentException if a part has words in another language alone
     */
    static List<Piece.Part> parts(String typed, Show show, Piece before) {
        PieceScript script = new PieceScript(show, before);
        List<Piece.Part> parts = new ArrayList<>();
        for (String part : typed.strip().split("\\R[ \\t]*\\R\\s*", -1)) {
            if (!part.isBlank()) {
                parts.add(script.part(part.strip()));
            }
        }
        return parts;
    }

    private Piece.Part part(String typed) {
        Matcher foreign = OTHER.matcher(typed);
        boolean isInOther = foreign.find();
        String first = (isInOther ? typed.substring(0, foreign.start()) : typed).strip();
        if (first.isEmpty()) {
            throw new IllegalArgumentException("The part " + Written.quoted(Written.brief(typed, 40))
                    + " has words in another language alone; write before it what it says in the first");
        }
        Matcher answered = ANSWERED.matcher(first);
        boolean hasAnswer = answered.matches();
        double answerS = hasAnswer ? Double.parseDouble(answered.group(2).replace(',', '.')) : 0;
        String said = hasAnswer ? answered.group(1) : first;
        String speaker = null;
        for (int colon = said.indexOf(':');
                speaker == null && colon > 0 && colon <= longest;
                colon = said.indexOf(':', colon + 1)) {
            speaker = name(said.substring(0, colon), said.substring(colon + 1));
            said = speaker == null ? said : said.substring(colon + 1).strip();
        }
        return new Piece.Part(said, answerS, speaker, isInOther ? other(foreign, said) : null);
    }

    private @Nullable String name(String typed, String after) {
        return after.isBlank()
                ? null
                : names.stream()
                        .filter(name -> new Speaker(name, false).isCalled(typed))
                        .findFirst()
                        .orElse(null);
    }

    private @Nullable Translation other(Matcher typed, String text) {
        String words = typed.group("words").strip();
        if (words.isEmpty()) {
            return null;
        }
        String named = Objects.requireNonNullElse(typed.group("speaker"), "").strip();
        String language = typed.group("language");
        Optional<Piece.Part> there = before.parts().stream()
                .filter(part -> {
                    Translation other = part.translation();
                    return other != null
                            && other.language().equals(language)
                            && unbroken(other.text()).equals(words);
                })
                .findFirst();
        Translation was = there.map(Piece.Part::translation).orElse(null);
        boolean marked = typed.group("older") != null;
        Translation other = new Translation(
                language,
                words,
                was == null ? null : was.shortText(),
                named.isEmpty() ? null : Optional.ofNullable(name(named, words)).orElse(named),
                marked);
        boolean accepted = was != null && was.older() && !marked;
        return there.isEmpty() || accepted
                ? other.older(false)
                : remark(text, other).after(remark(there.get().text(), was)).translation();
    }

    private static Remark remark(String text, @Nullable Translation other) {
        return Remark.of("part", RemarkKind.FACT, text).translated(other);
    }
}
