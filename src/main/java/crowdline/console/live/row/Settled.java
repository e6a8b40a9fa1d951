package crowdline.console.live.row;

import crowdline.console.paint.Pen;
import crowdline.console.theme.Appearance;
import java.util.Objects;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** The sizes of a row's texts, found again only when something has changed that they depend on. */
public final class Settled {
    /** What they depend on. */
    private record Key(Object texts, Appearance appearance, double onePx) {}

    private @Nullable Key key;
    private double[] sizes = {};

    public double[] sizes(Object texts, Pen pen, Supplier<double[]> find) {
        Key now = new Key(texts, pen.appearance(), pen.px(1));
        if (!Objects.equals(now, key)) {
            key = now;
            sizes = find.get();
        }
        return sizes;
    }
}
