package crowdline.edit.shape;

import static crowdline.edit.shape.ElementField.choice;
import static crowdline.edit.shape.ElementField.number;
import static crowdline.edit.shape.ElementField.optional;

import crowdline.edit.act.CannotBe;
import crowdline.show.bounds.Quantity;
import crowdline.show.figure.Element;
import crowdline.show.figure.Element.Size;
import crowdline.show.figure.Element.Until;
import crowdline.show.figure.ReversalWay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;

/** What can be told of each kind of element. */
public final class ElementFields {
    private static final String DEGREES = "Degrees";
    private static final String TOWARD = "Towards";
    private static final double WHOLE = 100;
    private static final List<Boolean> EITHER = List.of(true, false);

    private ElementFields() {}

    /** Its kind first, then its numbers and choices in the order they are thought of; the power last. */
    public static List<ElementField> of(Element element) {
        List<ElementField> fields = new ArrayList<>();
        fields.add(choice(
                "Kind",
                Arrays.asList(ElementKind.values()),
                ElementKind::word,
                ElementKind.of(element),
                kind -> kind == ElementKind.of(element) ? element : kind.fresh()));
        if (element instanceof Element.Line line) {
            line(fields, line);
        } else if (element instanceof Element.Arc arc) {
            arc(fields, arc);
        } else if (element instanceof Element.Roll roll) {
            roll(fields, roll);
        } else if (element instanceof Element.Turn turn) {
            turn(fields, turn);
        } else if (element instanceof Element.Reversal r) {
            fields.add(choice(
                    "Rolls",
                    Arrays.asList(ReversalWay.values()),
                    ElementText::way,
                    r.way(),
                    w -> new Element.Reversal(w, r.power())));
            fields.add(power(r.power(), p -> new Element.Reversal(r.way(), p)));
        } else if (element instanceof Element.Run run) {
            run(fields, run);
        } else if (element instanceof Element.Reposition back) {
            back(fields, back);
        } else {
            stalled(fields, element);
        }
        return fields;
    }

    private static ElementField power(double share, DoubleFunction<Element> made) {
        return new ElementField(
                "Power, %", "0 to 100", List.of(), ElementField.text(share * WHOLE), typed -> share(typed, made));
    }

    private static Element share(String typed, DoubleFunction<Element> made) throws CannotBe {
        String digits = typed.replace("%", "").strip();
        double percent = digits.matches("\\d{1,3}(\\.\\d{1,3})?") ? Double.parseDouble(digits) : -1;
        if (percent < 0 || percent > WHOLE) {
            throw new CannotBe("Power is a number from 0 to 100 per cent of full power");
        }
        return made.apply(percent / WHOLE);
    }

    private static void line(List<ElementField> fields, Element.Line l) {
        fields.add(choice("Ends", Arrays.asList(Until.values()), ElementText::end, l.until(), u -> {
            return new Element.Line(u, u == l.until() ? l.value() : usual(u), l.middle(), l.power());
        }));
        Quantity quantity = l.until().quantity();
        if (quantity != null) {
            fields.add(number(
                    ElementText.unit(l.until()),
                    quantity,
                    l.value(),
                    v -> new Element.Line(l.until(), v, l.middle(), l.power())));
        }
        fields.add(power(l.power(), p -> new Element.Line(l.until(), l.value(), l.middle(), p)));
    }

    private static double usual(Until until) {
        return switch (until) {
            case SECONDS -> 2;
            case METRES, KNOTS -> 100;
            case FEET -> 1_000;
            case RADII -> 1;
            case STALLS -> 1.3;
            case ALONG_M, ENTRY_HEIGHT, ENTRY_LINE -> 0;
        };
    }

    private static void arc(List<ElementField> fields, Element.Arc a) {
        Double degrees = a.degrees();
        Double to = a.toPathDeg();
        fields.add(choice("Way", a.way(), w -> arc(a, degrees, to, a.size(), a.value(), w)));
        fields.add(choice(
                "Through",
                EITHER,
                through -> through ? "an angle" : "to a path",
                degrees != null,
                through -> through == (degrees != null)
                        ? a
                        : arc(a, through ? 90.0 : null, through ? null : 0.0, a.size(), a.value(), a.way())));
        if (degrees != null) {
            fields.add(
                    number(DEGREES, Quantity.ARC_DEGREES, degrees, v -> arc(a, v, null, a.size(), a.value(), a.way())));
        } else if (to != null) {
            fields.add(number(
                    "To a path of, °",
                    Quantity.ARC_TO_PATH_DEG,
                    to,
                    v -> arc(a, null, v, a.size(), a.value(), a.way())));
        }
        fields.add(choice("How hard", Arrays.asList(Size.values()), ElementText::size, a.size(), s -> {
            return arc(a, degrees, to, s, s == a.size() ? a.value() : usual(s, a), a.way());
        }));
        Quantity sized = a.size().quantity();
        if (sized != null) {
            fields.add(number(
                    a.size() == Size.RADIUS_M ? "Radius, m" : "Load, g",
                    sized,
                    a.value(),
                    v -> arc(a, degrees, to, a.size(), v, a.way())));
        }
        fields.add(number(
                "Top, share",
                Quantity.ARC_TOP_SHARE,
                a.topShare(),
                v -> new Element.Arc(a.way(), degrees, to, a.size(), a.value(), v, a.power())));
        fields.add(power(a.power(), p -> new Element.Arc(a.way(), degrees, to, a.size(), a.value(), a.topShare(), p)));
    }

    private static double usual(Size size, Element.Arc arc) {
        return switch (size) {
            case LOAD_G, ROUND_FROM_G -> arc.way() == Element.Way.PULL ? 3 : -2;
            case RADIUS_M -> 100;
            case TIGHTEST, USUAL, CORNER, OVER -> 0;
        };
    }

    private static Element arc(
            Element.Arc a, @Nullable Double degrees, @Nullable Double to, Size size, double value, Element.Way way) {
        return new Element.Arc(way, degrees, to, size, value, a.topShare(), a.power());
    }

    private static void roll(List<ElementField> fields, Element.Roll r) {
        fields.add(choice("Style", r.style(), s -> {
            boolean slow = s == Element.RollStyle.SLOW && r.seconds() == null;
            boolean points = s == Element.RollStyle.HESITATION && r.pointsPerTurn() < 2;
            return new Element.Roll(
                    s,
                    r.toward(),
                    r.degrees(),
                    slow ? Double.valueOf(6) : r.seconds(),
                    points ? 4 : r.pointsPerTurn(),
                    r.pauseS(),
                    r.power());
        }));
        fields.add(
                choice(TOWARD, r.toward(), s -> roll(r, s, r.degrees(), r.seconds(), r.pointsPerTurn(), r.pauseS())));
        fields.add(number(
                DEGREES,
                Quantity.ROLL_DEGREES,
                r.degrees(),
                v -> roll(r, r.toward(), v, r.seconds(), r.pointsPerTurn(), r.pauseS())));
        if (r.style() == Element.RollStyle.HESITATION) {
            fields.add(number(
                    "Points in a turn",
                    Quantity.POINTS_PER_TURN,
                    r.pointsPerTurn(),
                    v -> roll(r, r.toward(), r.degrees(), r.seconds(), (int) Math.rint(v), r.pauseS())));
            fields.add(number(
                    "Pause, s",
                    Quantity.PAUSE_S,
                    r.pauseS(),
                    v -> roll(r, r.toward(), r.degrees(), r.seconds(), r.pointsPerTurn(), v)));
        } else if (r.style() != Element.RollStyle.AILERON) {
            fields.add(optional(
                    "Lasts, s",
                    Quantity.ROLL_SECONDS,
                    r.seconds(),
                    "as its speed asks for",
                    v -> roll(r, r.toward(), r.degrees(), v, r.pointsPerTurn(), r.pauseS())));
        }
        fields.add(power(
                r.power(),
                p -> new Element.Roll(
                        r.style(), r.toward(), r.degrees(), r.seconds(), r.pointsPerTurn(), r.pauseS(), p)));
    }

    private static Element roll(
            Element.Roll r, Element.Side toward, double degrees, @Nullable Double seconds, int points, double pauseS) {
        return new Element.Roll(r.style(), toward, degrees, seconds, points, pauseS, r.power());
    }

    private static void turn(List<ElementField> fields, Element.Turn t) {
        fields.add(choice(TOWARD, t.toward(), s -> {
            return new Element.Turn(
                    s, t.degrees(), t.bankDeg(), t.peakPathDeg(), t.climbs(), t.rolls(), t.endsBanked(), t.power());
        }));
        fields.add(number(DEGREES, Quantity.TURN_DEGREES, t.degrees(), v -> {
            return new Element.Turn(
                    t.toward(), v, t.bankDeg(), t.peakPathDeg(), t.climbs(), t.rolls(), t.endsBanked(), t.power());
        }));
        fields.add(optional("Bank, °", Quantity.TURN_BANK_DEG, t.bankDeg(), "as such an aircraft usually shows", v -> {
            return new Element.Turn(
                    t.toward(), t.degrees(), v, t.peakPathDeg(), t.climbs(), t.rolls(), t.endsBanked(), t.power());
        }));
        fields.add(number("Climbs at most, °", Quantity.TURN_PEAK_PATH_DEG, t.peakPathDeg(), v -> {
            return new Element.Turn(
                    t.toward(), t.degrees(), t.bankDeg(), v, t.climbs(), t.rolls(), t.endsBanked(), t.power());
        }));
        fields.add(choice("Comes down", EITHER, c -> c ? "stays up" : "comes down again", t.climbs(), c -> {
            return new Element.Turn(
                    t.toward(), t.degrees(), t.bankDeg(), t.peakPathDeg(), c, t.rolls(), t.endsBanked(), t.power());
        }));
        fields.add(number("Rolls in it", Quantity.TURN_ROLLS, t.rolls(), v -> {
            return new Element.Turn(
                    t.toward(), t.degrees(), t.bankDeg(), t.peakPathDeg(), t.climbs(), v, t.endsBanked(), t.power());
        }));
        fields.add(choice("At its end", EITHER, b -> b ? "stays banked" : "levels the wings", t.endsBanked(), b -> {
            return new Element.Turn(
                    t.toward(), t.degrees(), t.bankDeg(), t.peakPathDeg(), t.climbs(), t.rolls(), b, t.power());
        }));
        fields.add(power(t.power(), p -> {
            return new Element.Turn(
                    t.toward(), t.degrees(), t.bankDeg(), t.peakPathDeg(), t.climbs(), t.rolls(), t.endsBanked(), p);
        }));
    }

    /** What is flown stalled, or about a wing that is. */
    private static void stalled(List<ElementField> fields, Element element) {
        if (element instanceof Element.Flick f) {
            fields.add(choice("Stalled", f.kind(), k -> new Element.Flick(k, f.toward(), f.degrees(), f.power())));
            fields.add(choice(TOWARD, f.toward(), s -> new Element.Flick(f.kind(), s, f.degrees(), f.power())));
            fields.add(number(DEGREES, Quantity.FLICK_DEGREES, f.degrees(), v -> {
                return new Element.Flick(f.kind(), f.toward(), v, f.power());
            }));
            fields.add(power(f.power(), p -> new Element.Flick(f.kind(), f.toward(), f.degrees(), p)));
        } else if (element instanceof Element.Spin s) {
            fields.add(choice("How it sits", s.kind(), k -> new Element.Spin(k, s.toward(), s.turns(), s.power())));
            fields.add(choice(TOWARD, s.toward(), t -> new Element.Spin(s.kind(), t, s.turns(), s.power())));
            fields.add(number("Turns", Quantity.SPIN_TURNS, s.turns(), v -> {
                return new Element.Spin(s.kind(), s.toward(), v, s.power());
            }));
            fields.add(power(s.power(), p -> new Element.Spin(s.kind(), s.toward(), s.turns(), p)));
        } else if (element instanceof Element.Pivot p) {
            fields.add(choice(TOWARD, p.toward(), s -> new Element.Pivot(s, p.power())));
            fields.add(power(p.power(), share -> new Element.Pivot(p.toward(), share)));
        } else if (element instanceof Element.Slide s) {
            fields.add(choice("Falls through", s.kind(), k -> new Element.Slide(k, s.power())));
            fields.add(power(s.power(), p -> new Element.Slide(s.kind(), p)));
        } else if (element instanceof Element.HoverRoll h) {
            fields.add(
                    number("Lasts, s", Quantity.HOVER_SECONDS, h.seconds(), v -> new Element.HoverRoll(v, h.power())));
            fields.add(power(h.power(), p -> new Element.HoverRoll(h.seconds(), p)));
        } else if (element instanceof Element.Tumble t) {
            fields.add(choice(TOWARD, t.toward(), s -> new Element.Tumble(s, t.turns(), t.power())));
            fields.add(number("Turns", Quantity.TUMBLE_TURNS, t.turns(), v -> {
                return new Element.Tumble(t.toward(), v, t.power());
            }));
            fields.add(power(t.power(), p -> new Element.Tumble(t.toward(), t.turns(), p)));
        }
    }

    private static void run(List<ElementField> fields, Element.Run r) {
        place(fields, r.alongM(), r.awayM(), r.heightFt(), r.kt(), (along, away, ft, kt) -> {
            return new Element.Run(along, away, ft, kt, r.power());
        });
        fields.add(power(r.power(), p -> new Element.Run(r.alongM(), r.awayM(), r.heightFt(), r.kt(), p)));
    }

    private static void back(List<ElementField> fields, Element.Reposition r) {
        place(fields, r.alongM(), r.awayM(), r.heightFt(), r.kt(), (along, away, ft, kt) -> {
            return new Element.Reposition(along, away, ft, kt, r.bankDeg(), r.power());
        });
        fields.add(number("Bank at most, °", Quantity.REPOSITION_BANK_DEG, r.bankDeg(), v -> {
            return new Element.Reposition(r.alongM(), r.awayM(), r.heightFt(), r.kt(), v, r.power());
        }));
        fields.add(power(r.power(), p -> {
            return new Element.Reposition(r.alongM(), r.awayM(), r.heightFt(), r.kt(), r.bankDeg(), p);
        }));
    }

    private interface Placed {
        Element at(double alongM, double awayM, double heightFt, double kt);
    }

    private static void place(
            List<ElementField> fields, double along, double away, double ft, double kt, Placed placed) {
        fields.add(number("To the right, m", Quantity.PLACE_ALONG_M, along, v -> placed.at(v, away, ft, kt)));
        fields.add(number("Beyond the line, m", Quantity.PLACE_AWAY_M, away, v -> placed.at(along, v, ft, kt)));
        fields.add(number("Height, ft", Quantity.PLACE_HEIGHT_FT, ft, v -> placed.at(along, away, v, kt)));
        fields.add(number("Speed, kt", Quantity.PLACE_KT, kt, v -> placed.at(along, away, ft, v)));
    }
}
