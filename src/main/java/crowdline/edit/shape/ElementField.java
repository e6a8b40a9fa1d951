package crowdline.edit.shape;

import crowdline.edit.act.CannotBe;
import crowdline.measure.TypedNumber;
import crowdline.show.bounds.Quantity;
import crowdline.show.bounds.Written;
import crowdline.show.figure.Element;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * One thing that can be told of an element, as it is typed or chosen.
 *
 * @param label what it is, with its unit, such as "Radius, m"
 * @param how what is to be typed or chosen, for a tooltip and for screen readers
 * @param options what can be chosen; empty where it is typed
 * @param value as it stands
 * @param setting what becomes of the element
 */
public record ElementField(String label, String how, List<String> options, String value, Setting setting) {
    private static final int LONGEST = 20;

    /** What becomes of an element when this is typed or chosen. */
    interface Setting {
        Element of(String typed) throws CannotBe;
    }

    public ElementField {
        options = List.copyOf(options);
    }

    /**
     * The element with this typed or chosen.
     *
     * @throws CannotBe if that cannot be, with what is allowed
     */
    public Element with(String typed) throws CannotBe {
        try {
            return setting.of(typed.strip());
        } catch (IllegalArgumentException e) {
            throw new CannotBe(sentence(String.valueOf(e.getMessage())));
        }
    }

    /** What is usual for a number, such as "1 to 1,080"; empty where something is chosen. */
    public String range() {
        return options.isEmpty() ? how.replaceFirst("^usually ", "").replaceFirst("; left empty.*", "") : "";
    }

    static ElementField number(String label, Quantity quantity, double value, DoubleFunction<Element> made) {
        return new ElementField(label, usually(quantity), List.of(), text(value), typed -> {
            double number = read(label, quantity, typed);
            return made.apply(number);
        });
    }

    /** @param free what it is where nothing is typed */
    static ElementField optional(
            String label,
            Quantity quantity,
            @Nullable Double value,
            String free,
            Function<@Nullable Double, Element> made) {
        return new ElementField(
                label,
                usually(quantity) + "; left empty: " + free,
                List.of(),
                value == null ? "" : text(value),
                typed -> typed.isEmpty() ? made.apply(null) : made.apply(read(label, quantity, typed)));
    }

    static <E> ElementField choice(
            String label, List<E> options, Function<E, String> words, E value, Function<E, Element> made) {
        List<String> all = options.stream().map(words).toList();
        return new ElementField(label, "one of " + String.join(", ", all), all, words.apply(value), typed -> {
            int at = all.indexOf(typed);
            if (at < 0) {
                throw new CannotBe(label + " cannot be “" + brief(typed) + "”; it is one of " + String.join(", ", all));
            }
            return made.apply(options.get(at));
        });
    }

    static <E extends Enum<E>> ElementField choice(String label, E value, Function<E, Element> made) {
        List<E> all = new ArrayList<>(Arrays.asList(value.getDeclaringClass().getEnumConstants()));
        return choice(label, all, ElementField::word, value, made);
    }

    static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static String usually(Quantity quantity) {
        return "usually " + quantity.plausible();
    }

    private static double read(String label, Quantity quantity, String typed) throws CannotBe {
        OptionalDouble read = TypedNumber.read(typed, label);
        if (read.isEmpty()) {
            throw new CannotBe("“" + brief(typed) + "” is no number; " + label + " takes one, " + usually(quantity));
        }
        double number = read.getAsDouble();
        try {
            quantity.must(number);
        } catch (IllegalArgumentException e) {
            // The refusal begins with the key of the show file, which nobody here has seen.
            throw new CannotBe(label
                    + String.valueOf(e.getMessage()).substring(quantity.key().length()));
        }
        return number;
    }

    private static String brief(String typed) {
        return Written.brief(typed, LONGEST);
    }

    private static String sentence(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.UK) + words.substring(1);
    }

    /** To a hundredth: nobody flies more exactly. */
    static String text(double value) {
        return Quantity.written(Math.rint(value * 100) / 100.0 + 0.0);
    }
}
