package crowdline.console;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import crowdline.console.keys.Command;
import crowdline.console.live.SampleLiveViews;
import crowdline.console.place.Place;
import java.awt.Component;
import java.awt.FocusTraversalPolicy;
import java.awt.GraphicsEnvironment;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.KeyStroke;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A screen reader has a name and a role for everything that can have the keys. */
@Tag("window")
class SpokenNamesTest {
    private @Nullable RealWindow window;

    @BeforeEach
    void open() throws Exception {
        assumeThat(GraphicsEnvironment.isHeadless()).as("there is a screen").isFalse();
        window = new RealWindow(new StageHost());
        window().host.show(SampleLiveViews.all().values().iterator().next());
    }

    @AfterEach
    void close() {
        if (window != null) {
            window().close();
        }
    }

    private RealWindow window() {
        return Objects.requireNonNull(window);
    }

    /** Everything that Tab goes to, in its order. */
    private List<Component> reached() {
        FocusTraversalPolicy policy = window().frame.getFocusTraversalPolicy();
        Set<Component> reached = new LinkedHashSet<>();
        Component next = policy.getFirstComponent(window().frame);
        while (next != null && reached.add(next)) {
            next = policy.getComponentAfter(window().frame, next);
        }
        return List.copyOf(reached);
    }

    /** What cannot be told from anything else by ear. */
    private List<String> nameless(String where) {
        return RealWindow.onEventThread(() -> reached().stream()
                .filter(each -> !isSpoken(each))
                .map(each -> where + ": " + each.getClass().getName() + " in "
                        + each.getParent().getClass().getName())
                .toList());
    }

    private static boolean isSpoken(Component each) {
        AccessibleContext spoken = each instanceof Accessible accessible ? accessible.getAccessibleContext() : null;
        return spoken != null
                && spoken.getAccessibleName() != null
                && !spoken.getAccessibleName().isBlank()
                && spoken.getAccessibleRole() != AccessibleRole.UNKNOWN;
    }

    @Test
    void everyPlaceAndPageIsSpoken() {
        List<String> found = new ArrayList<>();
        for (Place place : Place.values()) {
            RealWindow.onEventThread(() -> {
                window().frame.go(place);
                return 0;
            });
            found.addAll(nameless(place.name()));
        }
        for (Command page : Command.values()) {
            if (page.name().startsWith("PAGE_")) {
                RealWindow.onEventThread(() -> {
                    window().frame.go(Place.PREPARE);
                    return 0;
                });
                window().press(KeyStroke.getKeyStroke(page.keys().get(0)).getKeyCode(), KeyEvent.VK_CONTROL);
                found.addAll(nameless(page.name()));
                assertThat(RealWindow.onEventThread(this::reached))
                        .as(page.name())
                        .hasSizeGreaterThan(3);
            }
        }
        assertThat(RealWindow.onEventThread(this::reached)).hasSizeGreaterThan(3);
        assertThat(found).isEmpty();
    }
}
