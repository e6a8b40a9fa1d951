package crowdline.console.prepare.list;

import crowdline.list.line.Corrected;
import crowdline.list.line.FigureList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Where the pieces of a list stand in the letter it was read in. A reader puts second thoughts in their places, so that the
 * order of the pieces need not be the letter's; one that stands there twice is found twice.
 *
 * @param spans by the key of a piece, as {@link Corrected} has it; of a piece that is put together of several, the first or the last of them
 */
record InLetter(Map<Integer, Span> spans) {
    /** Fewer words stand anywhere. */
    private static final int LEAST_WORDS = 2;
    /** What is longer is no letter, and is looked through for nothing. */
    private static final int MOST_PIECES = 1_000;

    /**
     * Letters of the text.
     *
     * @param from the first
     * @param to behind the last
     */
    record Span(int from, int to) {
        boolean holds(int at) {
            return at >= from && at <= to;
        }
    }

    InLetter {
        spans = Map.copyOf(spans);
    }

    /** Long pieces are looked for first: a short one stands in many places, and what is left of them is its own. */
    static InLetter of(String letter, FigureList list) {
        Corrected pieces = Corrected.of(list);
        List<Integer> keys = pieces.keys();
        if (keys.size() > MOST_PIECES) {
            return new InLetter(Map.of());
        }
        Folded text = Folded.of(letter);
        Span[] found = new Span[keys.size()];
        BitSet taken = new BitSet();
        IntStream.range(0, keys.size())
                .boxed()
                .sorted(Comparator.comparing(i -> -pieces.text(keys.get(i)).length()))
                .forEach(
                        i -> found[i] = text.find(pieces.text(keys.get(i)), between(found, i, letter.length()), taken));
        Map<Integer, Span> spans = new HashMap<>();
        IntStream.range(0, keys.size()).filter(i -> found[i] != null).forEach(i -> spans.put(keys.get(i), found[i]));
        return new InLetter(spans);
    }

    /** Behind what is found of the pieces before it, and ahead of what is found of those behind it. */
    private static Span between(Span[] found, int which, int end) {
        int from = Arrays.stream(found, 0, which)
                .filter(s -> s != null)
                .mapToInt(Span::to)
                .max()
                .orElse(0);
        int to = Arrays.stream(found, which, found.length)
                .filter(s -> s != null)
                .mapToInt(Span::from)
                .min()
                .orElse(end);
        return new Span(from, to);
    }

    /** The key of the piece at a letter; empty if there is none. */
    OptionalInt at(int letter) {
        return spans.entrySet().stream()
                .filter(e -> e.getValue().holds(letter))
                .min(Comparator.comparing(e -> e.getValue().to() - e.getValue().from()))
                .map(e -> OptionalInt.of(e.getKey()))
                .orElse(OptionalInt.empty());
    }

    /**
     * A text in small letters and with one space where there is any, and of each letter where it stood.
     *
     * @param at by the letter of the words where it stands in the text
     */
    private record Folded(String words, List<Integer> at) {
        static Folded of(String text) {
            StringBuilder words = new StringBuilder();
            List<Integer> at = new ArrayList<>();
            boolean isSpace = true;
            for (int i = 0; i < text.length(); i++) {
                char c = text.charAt(i);
                boolean isNext = Character.isWhitespace(c) || Character.isSpaceChar(c);
                if (!isNext || !isSpace) {
                    words.append(isNext ? ' ' : Character.toLowerCase(c));
                    at.add(i);
                }
                isSpace = isNext;
            }
            return new Folded(words.toString(), at);
        }

        /** Finds a piece, or as much of its beginning as stands together, or else of its end; null if it is nowhere. */
        @Nullable
        Span find(String piece, Span between, BitSet taken) {
            List<String> words = List.of(piece.strip().split("\\s+"));
            int least = Math.min(LEAST_WORDS, words.size());
            Span found = null;
            for (int many = words.size(); found == null && many >= least; many--) {
                found = place(String.join(" ", words.subList(0, many)), between, taken);
            }
            for (int from = 1; found == null && from <= words.size() - least; from++) {
                found = place(String.join(" ", words.subList(from, words.size())), between, taken);
            }
            return found;
        }

        /** Finds a piece, between others if it is there, else where nothing else was found, else in another; null if nowhere. */
        @Nullable
        Span place(String piece, Span between, BitSet taken) {
            String wanted = of(piece).words().strip();
            Span anywhere = null;
            Span free = null;
            for (int i = wanted.isEmpty() ? -1 : words.indexOf(wanted); i >= 0; i = words.indexOf(wanted, i + 1)) {
                Span here = new Span(at.get(i), at.get(i + wanted.length() - 1) + 1);
                boolean isWhole = isWhole(i, wanted.length());
                boolean isFree = isWhole && taken.get(here.from(), here.to()).isEmpty();
                if (isFree && here.from() >= between.from() && here.to() <= between.to()) {
                    free = here;
                    break;
                }
                free = free == null && isFree ? here : free;
                anywhere = anywhere == null && isWhole ? here : anywhere;
            }
            Span found = free == null ? anywhere : free;
            if (found != null) {
                taken.set(found.from(), found.to());
            }
            return found;
        }

        /** Whether no word goes on at either end. */
        private boolean isWhole(int from, int length) {
            return !(joins(from - 1) && joins(from)) && !(joins(from + length - 1) && joins(from + length));
        }

        private boolean joins(int i) {
            return i >= 0 && i < words.length() && Character.isLetterOrDigit(words.charAt(i));
        }
    }
}
