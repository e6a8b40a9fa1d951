package crowdline.list;

import crowdline.list.draft.Detail;
import crowdline.list.draft.Formations;
import crowdline.list.piece.Condition;
import crowdline.list.piece.Heard;
import crowdline.list.split.Piece;
import crowdline.list.split.Sentence;
import crowdline.list.word.Manner;
import crowdline.list.word.Text;
import crowdline.list.word.Word;
import crowdline.list.word.Words;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What stands ahead of the figures of a sentence and is none: a greeting, a heading, "if the cloud allows". */
final class Prelude {
    private static final Set<String> WHO = Set.of(
            "solo",
            "soloist",
            "solos",
            "synchro",
            "pair",
            "duo",
            "pairs",
            "trio",
            "four-ship",
            "singleton",
            "leader",
            "lead",
            "team",
            "wingman",
            "wingmen",
            "all",
            "both",
            "everyone",
            "main",
            "group",
            "section",
            "formation",
            "number",
            "aircraft",
            "alone",
            "front",
            "rear",
            "outer",
            "inner",
            "outside",
            "inside",
            "other",
            "rest");

    private static final Set<String> NUMBER_OF = Set.of("number", "no", "nr", "#");

    private static final Set<String> CRAFT = Set.of(
            "fighter",
            "warbird",
            "biplane",
            "monoplane",
            "trainer",
            "two-seater",
            "single-seater",
            "glider",
            "sailplane",
            "jet",
            "helicopter",
            "ship",
            "parachutists",
            "jumpers",
            "skydivers");

    private static final Set<String> PERSONS = Set.of(
            "me", "us", "him", "her", "them", "myself", "himself", "herself", "together", "wife", "husband", "one");

    /** "Then Bill does:" */
    private static final Set<String> DOES = Set.of("do", "doe", "fly");

    private static final Set<String> TITLES = Set.of(
            "display", "demo", "demonstration", "routine", "programme", "program", "sequence", "act", "list", "order");

    /** Right behind a word that names a figure elsewhere: "Parachute team, six jumpers". */
    private static final Pattern TEAM = Pattern.compile(
            "(?:^|.* )(?:parachute|jump|freefall|canopy|formation|hover) team\\b.*|(?:^|.* )formation of (?:\\d|two|three|four|five|six|seven|eight|nine)\\b.*");

    /** Of an act: "Second half:". */
    private static final Set<String> PARTS = Set.of("half", "part", "section", "block", "act", "segment");

    /** What a letter says of itself. */
    private static final Set<String> LETTER = Set.of(
            "change",
            "tweak",
            "update",
            "notice",
            "answer",
            "usual",
            "version",
            "amendment",
            "correction",
            "time",
            "reply",
            "letter",
            "mail",
            "email",
            "message",
            "reminder",
            "promised",
            "requested",
            "asked",
            "latest");

    /** "Last one: smoke on, pull up." */
    private static final Set<String> LAST = Set.of(
            "last",
            "final",
            "the",
            "and",
            "1",
            "thing",
            "figure",
            "item",
            "for",
            "goodbye",
            "farewell",
            "middle",
            "bit",
            "finale",
            "opener");

    private static final int LONGEST_OF_THE_LETTER = 8;

    private static final Pattern CALL = Pattern.compile("[\\W\\d]*?\"(?<said>[^\"\\n]{2,40})\"\\s*-+\\s");

    private static final int LONGEST_WHO = 5;
    private static final int LONGEST_TITLE = 4;
    private static final int LONGEST_NAME = 3;
    private static final int LONGEST_CALLED = 2;
    /** Who is named once may be what is flown. */
    private static final int LEAST_CALLED = 2;

    /** What flies is named in no more words, by judgement. */
    private static final int LONGEST_CRAFT = 7;

    /** A figure takes less, by judgement. */
    private static final double SHORTEST_ACT_MIN = 3;

    private Prelude() {}

    /**
     * Whether a line ahead of the list says what flies, such as "Piston fighter, 8 min" or "4 ship": it is no figure that lasts
     * eight minutes.
     */
    static boolean isCraft(List<Heard> pieces) {
        List<Word> words =
                pieces.stream().flatMap(piece -> piece.words().stream()).toList();
        return words.size() <= LONGEST_CRAFT
                && pieces.stream().noneMatch(Heard::isFigure)
                && words.stream().anyMatch(word -> CRAFT.contains(word.plain()));
    }

    /** Whether a sentence ahead of the list speaks of the letter itself: "Dee, one change", "just the usual then". */
    static boolean isOfTheLetter(Sentence sentence, List<Heard> pieces) {
        List<Word> words =
                pieces.stream().flatMap(piece -> piece.words().stream()).toList();
        return !sentence.numbered()
                && words.size() <= LONGEST_OF_THE_LETTER
                && pieces.stream()
                        .noneMatch(piece -> piece.isFigure()
                                || piece.drafts().get(0).saysAnything()
                                || Manner.FLOWN.hasAny(piece.words()))
                && words.stream().anyMatch(word -> LETTER.contains(word.plain()));
    }

    /** Whether a line ahead of the list is its title, though it names a figure: "Parachute display, club day". */
    static boolean isTitle(List<Heard> pieces) {
        return pieces.stream().filter(Heard::isFigure).count() == 1
                && pieces.stream().allMatch(piece -> piece.drafts().size() == 1)
                && (isTeam(pieces)
                        || pieces.stream()
                                .flatMap(piece -> piece.drafts().stream())
                                .flatMap(draft -> draft.notes().stream())
                                .flatMap(note -> Words.of(Words.folded(note)).stream())
                                .anyMatch(word -> TITLES.contains(word.plain())));
    }

    private static boolean isTeam(List<Heard> pieces) {
        return pieces.stream().anyMatch(piece -> TEAM.matcher(piece.said()).matches());
    }

    /**
     * Whether a piece is one.
     *
     * @param at which of the pieces
     * @param isFirst whether no figure came yet
     */
    static boolean isAt(List<Heard> pieces, int at, Sentence sentence, Text text, boolean isFirst) {
        Heard piece = pieces.get(at);
        if (piece.words().isEmpty() && at + 1 < pieces.size()) {
            return isAt(pieces, at + 1, sentence, text, isFirst);
        }
        if (at + 1 < pieces.size() && pieces.get(at + 1).isFigure() && isCall(piece, sentence, text)) {
            return true;
        }
        boolean leads = piece.isWeak()
                && (piece.words().size() == 1 || Manner.HEADING.hasAny(piece.words()))
                && endsWithAColon(piece, text);
        if ((piece.isFigure() && !leads)
                || pieces.subList(at + 1, pieces.size()).stream().noneMatch(Heard::isFigure)) {
            return false;
        }
        if (leads
                || (isFirst && isLength(piece))
                || Facts.isOne(piece, false)
                || Tone.isAside(piece, sentence)
                || Tone.onlyTells(piece)
                || Condition.isAll(piece.words())) {
            return true;
        }
        boolean isLast = piece.words().stream().allMatch(word -> LAST.contains(word.plain()));
        if (isLast && endsWithAColon(piece, text)) {
            return true;
        }
        boolean isCalled = isCalled(pieces, at, text);
        return !piece.isSilent()
                && !piece.isDetail()
                && (isLast
                        || isCalled
                        || piece.words().stream().allMatch(Prelude::describes)
                        || Manner.HEADING.hasAny(piece.words())
                        || (endsWithAColon(piece, text)
                                && (isFirst
                                        || isWhoFlies(piece)
                                        || isSomebody(piece, text)
                                        || isOneOfSeveral(piece, sentence, text)))
                        || (isFirst && leadsToAColon(pieces, at, text)));
    }

    /** "Kestrel - loop" where Kestrel is named again: a dash may stand behind who flies as well as a colon. */
    private static boolean isCalled(List<Heard> pieces, int at, Text text) {
        Heard piece = pieces.get(at);
        List<Word> name = piece.words().stream()
                .dropWhile(word -> word.number() != null || word.plain().indexOf(':') >= 0)
                .toList();
        if (name.isEmpty()
                || name.size() > LONGEST_CALLED
                || pieces.get(at + 1).piece().parting() != Piece.Parting.DASH
                || !Character.isUpperCase(text.written().charAt(name.get(0).start()))
                || name.stream()
                        .anyMatch(word -> word.number() != null
                                || Manner.FLOWN.has(word)
                                || Manner.HEADING.has(word)
                                || describes(word))) {
            return false;
        }
        String called = text.folded()
                .substring(name.get(0).start(), name.get(name.size() - 1).end());
        return Pattern.compile("\\b" + Pattern.quote(called) + "\\b")
                        .matcher(text.folded())
                        .results()
                        .count()
                >= LEAST_CALLED;
    }

    /** Whether a line says only who flies what follows: "all nine". */
    static boolean isOnlyWho(List<Heard> pieces) {
        return pieces.size() == 1
                && !pieces.get(0).isFigure()
                && pieces.get(0).words().size() > 1
                && pieces.get(0).words().stream().allMatch(word -> WHO.contains(word.plain()) || word.number() != null)
                && pieces.get(0).words().stream().anyMatch(word -> WHO.contains(word.plain()));
    }

    /** "'Last pass' - low fly-by": what is said on the radio stands ahead of what is flown. */
    private static boolean isCall(Heard piece, Sentence sentence, Text text) {
        Matcher call = CALL.matcher(text.folded()).region(sentence.start(), sentence.end());
        return call.lookingAt() && piece.piece().from() < call.end("said");
    }

    /** "9 min", ahead of all figures: so long takes the whole act, and no first figure. */
    private static boolean isLength(Heard piece) {
        List<Word> words =
                piece.words().stream().filter(word -> !Manner.FILLER.has(word)).toList();
        return piece.isDetail()
                && piece.drafts().get(0).saysOnly(Detail.SECONDS)
                && words.size() == 2
                && words.get(0).number() != null
                && words.get(0).number() >= SHORTEST_ACT_MIN
                && words.get(1).plain().startsWith("min");
    }

    /** "The small biplane, Sunday 11:20: take-off, climb": all of it heads the list. */
    private static boolean leadsToAColon(List<Heard> pieces, int from, Text text) {
        int at = from;
        while (at < pieces.size() && !pieces.get(at).isFigure()) {
            if (endsWithAColon(pieces.get(at), text)) {
                return true;
            }
            at++;
        }
        return false;
    }

    private static boolean endsWithAColon(Heard piece, Text text) {
        return text.written()
                .substring(piece.piece().start(), piece.piece().end())
                .stripTrailing()
                .endsWith(":");
    }

    /** "Synchro pair: mirror." */
    private static boolean isWhoFlies(Heard piece) {
        return piece.words().stream().allMatch(word -> WHO.contains(word.plain()) || word.number() != null)
                || (piece.words().size() <= 3
                        && (PARTS.contains(piece.words()
                                        .get(piece.words().size() - 1)
                                        .plain())
                                || PARTS.contains(piece.words().get(0).plain())))
                || (piece.words().size() <= LONGEST_WHO
                        && DOES.contains(
                                piece.words().get(piece.words().size() - 1).plain()))
                || (piece.words().size() == 2
                        && WHO.contains(piece.words().get(1).plain()));
    }

    /** "Trio, from the right", "number two": nothing but who flies what follows, and where it comes from. */
    static boolean isWhoAlone(Heard piece) {
        List<Word> left = piece.drafts().get(0).notes().stream()
                .flatMap(note -> Words.of(Words.folded(note)).stream())
                .filter(word -> !Manner.FILLER.has(word) && !Formations.isShape(word.plain()))
                .toList();
        return left.size() <= LONGEST_WHO
                && left.stream()
                        .allMatch(word ->
                                WHO.contains(word.plain()) || NUMBER_OF.contains(word.plain()) || word.number() != null)
                && (left.isEmpty()
                        ? !piece.isSilent() && !piece.isDetail()
                        : piece.words().stream().anyMatch(word -> WHO.contains(word.plain())));
    }

    /** "Me (blue one):", "Both together:": who flies what follows in the line. */
    private static boolean isOneOfSeveral(Heard piece, Sentence sentence, Text text) {
        List<Word> words = piece.words();
        boolean isTimed = Character.isDigit(text.written().charAt(piece.piece().from()));
        return !sentence.numbered()
                && !isTimed
                && words.size() <= LONGEST_WHO
                && !Manner.FLOWN.hasAny(words)
                && (PERSONS.contains(words.get(0).plain())
                        || WHO.contains(words.get(0).plain())
                        || PERSONS.contains(words.get(words.size() - 1).plain()));
    }

    /** "Beat: stall turn, Anna: loop": one word ahead of a colon is who flies what follows, or what it is called. */
    static boolean isSomebody(Heard piece, Text text) {
        List<Word> words = piece.words();
        return words.size() == 1
                && words.get(0).number() == null
                && !Denial.takesBack(piece, true)
                && !Manner.FLOWN.has(words.get(0))
                && endsWithAColon(piece, text);
    }

    /** "7. Heart in smoke, start talking early because it blows away": the first words are what is flown. */
    static boolean isFlown(Heard piece) {
        return piece.words().size() <= LONGEST_TITLE && !Manner.SENTENCE.hasAny(piece.words()) && !piece.isSilent();
    }

    /** Such as "Sam," ahead of everything. */
    static boolean isName(Sentence sentence, List<Heard> pieces, Text text) {
        long words = pieces.stream().mapToLong(piece -> piece.words().size()).sum();
        String written = sentence.written(text);
        return pieces.size() <= 2 && words <= LONGEST_NAME && written.endsWith(",");
    }

    /** Whether a word says how something is, not what. */
    static boolean describes(Word word) {
        return Manner.DESCRIBING.has(word) || Manner.FILLER.has(word) || word.number() != null;
    }
}
