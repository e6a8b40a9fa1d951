package crowdline.arrange;

import crowdline.flight.FigureTrial;
import crowdline.flight.body.FlightState;
import crowdline.layout.Piece;
import crowdline.layout.Wish;
import crowdline.show.figure.Element;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Half rolls that a list names beside a figure that has them: "half roll, inverted pass, half roll to upright" is over once
 * and back once. Such figures are laid out as one, without the rolls that are in it twice, and told apart again.
 */
final class HalfRolls {
    /** How the parts are called that a wish was made of, by its id; each flies what it is to fly. */
    private final Map<String, List<Wish>> parts = new HashMap<>();

    private final List<Wish> wishes = new ArrayList<>();

    /** What is being put together. */
    private List<Wish> open = List.of();
    /** Whether what is open ends upside down. */
    private boolean inverted;

    private HalfRolls() {}

    /** The wishes, with those put together that belong together. */
    static HalfRolls of(List<Wish> asked) {
        HalfRolls made = new HalfRolls();
        asked.forEach(made::next);
        made.close();
        return made;
    }

    List<Wish> wishes() {
        return wishes;
    }

    private void next(Wish wish) {
        Wish last = open.isEmpty() ? null : open.get(open.size() - 1);
        boolean isRoll = isHalfRoll(wish);
        if (last == null || !isFlown(wish) || !agree(open.get(0), wish)) {
            begin(wish);
        } else if (isRoll && !inverted && endsWithRoll(last)) {
            open.set(
                    open.size() - 1,
                    last.flying(last.elements().subList(0, last.elements().size() - 1)));
            open.add(wish);
        } else if (isRoll && inverted) {
            open.add(wish);
            inverted = false;
        } else if (inverted && beginsWithRoll(wish)) {
            open.add(wish.flying(wish.elements().subList(1, wish.elements().size())));
            inverted = false;
        } else {
            begin(wish);
        }
    }

    private void begin(Wish wish) {
        close();
        open = new ArrayList<>(List.of(wish));
        inverted = isHalfRoll(wish);
    }

    private void close() {
        if (open.size() > 1) {
            wishes.add(together(open));
            parts.put(open.get(0).id(), List.copyOf(open));
        } else {
            wishes.addAll(open);
        }
        open = List.of();
    }

    private static boolean isFlown(Wish wish) {
        return wish.role() == Wish.Role.FIGURE && wish.isFlown();
    }

    /** Nothing but over and on for a moment, whoever calls it what. */
    private static boolean isHalfRoll(Wish wish) {
        List<Element> elements = wish.elements();
        return isFlown(wish)
                && isOver(elements.get(0))
                && elements.stream()
                        .skip(1)
                        .allMatch(e ->
                                e instanceof Element.Line line && line.middle().isEmpty());
    }

    private static boolean endsWithRoll(Wish wish) {
        List<Element> elements = wish.elements();
        return elements.size() > 1 && isOver(elements.get(elements.size() - 1));
    }

    /** Over, and then something upside down: what pulls through at once is a figure of its own. */
    private static boolean beginsWithRoll(Wish wish) {
        List<Element> elements = wish.elements();
        return elements.size() > 2
                && isOver(elements.get(0))
                && (elements.get(1) instanceof Element.Line || elements.get(1) instanceof Element.Spin);
    }

    private static boolean isOver(Element element) {
        return element instanceof Element.Roll roll
                && roll.style() == Element.RollStyle.AILERON
                && roll.degrees() == 180;
    }

    /** Whether nothing told of one forbids the other to follow at once. */
    private static boolean agree(Wish first, Wish next) {
        return agree(first.end(), next.end())
                && agree(first.alongM(), next.alongM())
                && agree(first.toRight(), next.toRight())
                && agree(first.heightFt(), next.heightFt());
    }

    private static boolean agree(@Nullable Object first, @Nullable Object next) {
        return first == null || next == null || first.equals(next);
    }

    private static Wish together(List<Wish> parts) {
        Wish first = parts.get(0);
        Wish main = parts.stream().filter(w -> !isHalfRoll(w)).findFirst().orElse(first);
        return new Wish(
                first.id(),
                main.name(),
                parts.stream().flatMap(w -> w.elements().stream()).toList(),
                parts.stream().anyMatch(Wish::own),
                main.enters(),
                told(parts, Wish::end),
                told(parts, Wish::alongM),
                told(parts, Wish::toRight),
                told(parts, Wish::heightFt),
                told(parts, Wish::kt),
                null,
                Wish.Role.FIGURE,
                null);
    }

    private interface Pin<T> {
        @Nullable
        T of(Wish wish);
    }

    private static <T> @Nullable T told(List<Wish> parts, Pin<T> pin) {
        return parts.stream().map(pin::of).filter(Objects::nonNull).findFirst().orElse(null);
    }

    /** The pieces with each part one of its own; empty if some that were put together cannot be flown so. */
    Optional<List<Piece>> apart(List<Piece> pieces, FigureTrial trial) {
        List<Piece> all = new ArrayList<>();
        for (Piece piece : pieces) {
            Wish wish = piece.wish();
            List<Wish> made = wish == null ? null : parts.get(wish.id());
            if (made == null) {
                all.add(piece);
                continue;
            }
            if (piece.elements().size()
                    != Objects.requireNonNull(wish).elements().size()) {
                return Optional.empty();
            }
            int from = 0;
            FlightState at = piece.from();
            for (Wish part : made) {
                int to = from + part.elements().size();
                List<Element> elements = piece.elements().subList(from, to);
                FigureTrial.Outcome out = trial.fly(elements, at);
                if (!out.flown()) {
                    return Optional.empty();
                }
                all.add(new Piece(
                        part,
                        null,
                        elements,
                        out.seconds(),
                        at,
                        out.end(),
                        null,
                        out.box().lowestM()));
                at = out.end();
                from = to;
            }
        }
        return Optional.of(all);
    }
}
