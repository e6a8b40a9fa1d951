package crowdline.console.prepare.glance;

import crowdline.console.prepare.field.Numbers;
import crowdline.edit.act.CannotBe;
import crowdline.edit.act.Pin;
import crowdline.measure.Measures.Dimension;
import crowdline.measure.TypedNumber;
import crowdline.show.bounds.Written;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Asked.Hand;
import crowdline.show.figure.Asked.Place;
import crowdline.show.figure.Placing.Heading;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** One thing that can be told about a figure, as it is typed or chosen. */
public enum PinField {
    PLACE("Place", "where along the line", "anywhere", "left end", "centre", "right end"),
    WAY("Flies to the", "which way it begins", "either way", "right", "left"),
    SIDE("Side", "which way the pilot turns or rolls", "either side", "left", "right"),
    HEIGHT("Begins at, ft", "a height above the datum, such as 800 ft"),
    SPEED("Begins at, kt", "a speed, such as 120 kt"),
    TIMES("Number", "how often, or how many turns, such as 2"),
    SECONDS("Lasts, s", "seconds, such as 12"),
    BEGINS("By the list, s", "seconds from the beginning of the act, such as 45");

    private final String label;
    private final String how;

    @SuppressWarnings("ImmutableEnumChecker") // filled by List.of, so it never changes
    private final List<String> options;

    PinField(String label, String how, String... options) {
        this.label = label;
        this.how = how;
        this.options = List.of(options);
    }

    public String label() {
        return label;
    }

    /** What a number typed here is. */
    public Dimension dimension() {
        return Dimension.of(label);
    }

    /** What is to be typed or chosen, for a tooltip and for screen readers. */
    public String how() {
        return how;
    }

    /** What can be chosen, the first for nothing told; empty where it is typed. */
    public List<String> options() {
        return options;
    }

    /** Whether it says how the catalogue's shape is drawn, and so nothing of a shape of one's own. */
    boolean isOfCatalogue() {
        return this == SIDE || this == TIMES || this == SECONDS;
    }

    /** What is told of it, as it is typed or chosen; empty if nothing is. */
    String told(Asked asked) {
        return switch (this) {
            case PLACE -> asked.alongM() != null ? along(asked.alongM()) : word(asked.place());
            case WAY -> asked.heading() == null ? "" : asked.heading() == Heading.LEFT ? "left" : "right";
            case SIDE -> word(asked.side());
            case HEIGHT -> Numbers.text(asked.heightFt());
            case SPEED -> Numbers.text(asked.kt());
            case TIMES -> Numbers.text(asked.count());
            case SECONDS -> Numbers.text(asked.seconds());
            case BEGINS -> Numbers.text(asked.beginsS());
        };
    }

    /** A place on the line in words. */
    static String along(double metres) {
        return Math.abs(metres) < 0.5
                ? "0 m"
                : String.format(Locale.UK, "%,.0f m %s", Math.abs(metres), metres < 0 ? "left" : "right");
    }

    private static String word(@Nullable Enum<?> value) {
        return value == null ? "" : value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /**
     * What was typed or chosen, to be told; nothing, or the first of the options, takes back what was told.
     *
     * @throws CannotBe if it is no number
     */
    public Pin pin(String typed) throws CannotBe {
        String text = typed.strip();
        boolean free = text.isEmpty() || (!options.isEmpty() && text.equals(options.get(0)));
        return switch (this) {
            case PLACE -> new Pin.Where(free ? null : place(text));
            case WAY -> new Pin.Way(free ? null : text.equals("left") ? Heading.LEFT : Heading.RIGHT);
            case SIDE -> new Pin.Side(free ? null : text.equals("left") ? Hand.LEFT : Hand.RIGHT);
            case HEIGHT -> new Pin.Height(free ? null : read(text));
            case SPEED -> new Pin.Speed(free ? null : read(text));
            case TIMES -> new Pin.Count(free ? null : read(text));
            case SECONDS -> new Pin.Length(free ? null : read(text));
            case BEGINS -> new Pin.Begins(free ? null : read(text));
        };
    }

    private static Place place(String text) {
        return switch (text) {
            case "left end" -> Place.LEFT_END;
            case "right end" -> Place.RIGHT_END;
            default -> Place.CENTRE;
        };
    }

    private Double read(String text) throws CannotBe {
        OptionalDouble number = TypedNumber.read(text, label);
        if (number.isEmpty()) {
            throw new CannotBe("“" + Written.brief(text, 21) + "” is no number; " + label + " takes " + how);
        }
        return number.getAsDouble();
    }
}
