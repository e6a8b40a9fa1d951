package crowdline.arrange;

import crowdline.layout.End;
import crowdline.layout.Wish;
import crowdline.layout.Wish.Role;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.catalogue.EntrySpeed;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Element;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Placing.Heading;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the layout is told of the figures of an act. */
final class Wishes {
    private static final String TAKE_OFF = "take-off";
    private static final String LANDING = "landing";
    private static final String TURN_BACK = "reposition";

    private Wishes() {}

    /**
     * The wish for a figure that was asked for.
     *
     * @param own what is flown in place of what the catalogue has, nothing if it only takes its time; else null
     */
    static Wish of(Figure figure, Asked asked, @Nullable List<Element> own, Catalogue catalogue) {
        @Nullable CatalogueEntry entry = catalogue.find(figure.figure()).orElse(null);
        Role role = own == null || own.isEmpty() ? role(entry) : Role.FIGURE;
        List<Element> elements = own != null
                ? own
                : entry == null || role != Role.FIGURE
                        ? List.of()
                        : Counted.of(entry.elements(), asked.count(), asked.side());
        @Nullable EntrySpeed enters = entry == null ? null : entry.enters();
        return new Wish(
                figure.id(),
                catalogue.nameOf(figure),
                elements,
                own != null,
                enters,
                end(asked),
                asked.alongM(),
                toRight(asked.heading()),
                asked.heightFt(),
                asked.kt(),
                asked.seconds(),
                role,
                null);
    }

    private static Role role(@Nullable CatalogueEntry entry) {
        return switch (entry == null ? "" : entry.name()) {
            case TAKE_OFF -> Role.TAKE_OFF;
            case LANDING -> Role.LANDING;
            case TURN_BACK -> Role.TURN_BACK;
            default -> Role.FIGURE;
        };
    }

    private static @Nullable End end(Asked asked) {
        Asked.Place place = asked.place();
        if (place == null) {
            return null;
        }
        return switch (place) {
            case LEFT_END -> End.LEFT;
            case CENTRE -> End.CENTRE;
            case RIGHT_END -> End.RIGHT;
        };
    }

    private static @Nullable Boolean toRight(@Nullable Heading heading) {
        return heading == Heading.RIGHT ? Boolean.TRUE : heading == Heading.LEFT ? Boolean.FALSE : null;
    }
}
