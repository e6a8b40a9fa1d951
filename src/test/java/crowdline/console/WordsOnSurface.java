package crowdline.console;

import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.GraphicsConfiguration;
import java.awt.Paint;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.text.AttributedCharacterIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** A surface that passes everything on to another and keeps what was written on it, where and how large. */
final class WordsOnSurface extends PassedOn {
    /**
     * Words as they were written.
     *
     * @param sizePx of their type
     * @param ink what they cover, in pixels of the surface
     * @param clip what could be seen there
     */
    record Written(String text, double sizePx, Rectangle2D ink, Rectangle2D clip) {}

    private final List<Written> written;

    /** What a component writes when it is painted. */
    static List<Written> written(Component component) {
        List<Written> all = new ArrayList<>();
        // What is painted is not looked at, and with one pixel nothing is.
        Graphics2D g = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
        component.print(new WordsOnSurface(g, all));
        g.dispose();
        return all;
    }

    /** What is not within what can be seen, and what lies on something else. */
    static List<String> notApart(List<Written> all) {
        List<String> wrong = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            Written one = all.get(i);
            if (!one.text().isBlank() && !one.clip().contains(one.ink())) {
                wrong.add("\"" + one.text() + "\" is clipped");
            }
            for (Written other : all.subList(0, i)) {
                if (other.ink().intersects(one.ink())) {
                    wrong.add("\"" + other.text() + "\" under \"" + one.text() + "\"");
                }
            }
        }
        return wrong;
    }

    /** The first component of a kind within another. */
    static <C extends Component> C find(Component in, Class<C> kind) {
        return within(in, kind).orElseThrow();
    }

    private static <C extends Component> Optional<C> within(Component in, Class<C> kind) {
        if (kind.isInstance(in)) {
            return Optional.of(kind.cast(in));
        }
        return in instanceof Container container
                ? Stream.of(container.getComponents())
                        .flatMap(child -> within(child, kind).stream())
                        .findFirst()
                : Optional.empty();
    }

    WordsOnSurface(Graphics2D to, List<Written> written) {
        super(to);
        this.written = written;
    }

    @Override
    public void drawString(String text, float x, float y) {
        Rectangle2D ink = to.getFont()
                .createGlyphVector(to.getFontRenderContext(), text)
                .getOutline(x, y)
                .getBounds2D();
        Rectangle2D clip = to.getClip() == null ? ink : to.getClip().getBounds2D();
        written.add(new Written(
                text,
                to.getFont().getSize2D(),
                to.getTransform().createTransformedShape(ink).getBounds2D(),
                to.getTransform().createTransformedShape(clip).getBounds2D()));
        to.drawString(text, x, y);
    }

    @Override
    public void drawString(String text, int x, int y) {
        drawString(text, (float) x, (float) y);
    }

    @Override
    public void drawString(AttributedCharacterIterator text, int x, int y) {
        to.drawString(text, x, y);
    }

    @Override
    public void drawString(AttributedCharacterIterator text, float x, float y) {
        to.drawString(text, x, y);
    }

    @Override
    public Graphics create() {
        return new WordsOnSurface((Graphics2D) to.create(), written);
    }

    @Override
    public void addRenderingHints(Map<?, ?> p0) {
        to.addRenderingHints(p0);
    }

    @Override
    public Color getBackground() {
        return to.getBackground();
    }

    @Override
    public GraphicsConfiguration getDeviceConfiguration() {
        return to.getDeviceConfiguration();
    }

    @Override
    public Paint getPaint() {
        return to.getPaint();
    }

    @Override
    public Object getRenderingHint(RenderingHints.Key p0) {
        return to.getRenderingHint(p0);
    }

    @Override
    public RenderingHints getRenderingHints() {
        return to.getRenderingHints();
    }

    @Override
    public Stroke getStroke() {
        return to.getStroke();
    }

    @Override
    public AffineTransform getTransform() {
        return to.getTransform();
    }

    @Override
    public boolean hit(Rectangle p0, Shape p1, boolean p2) {
        return to.hit(p0, p1, p2);
    }

    @Override
    public void rotate(double p0, double p1, double p2) {
        to.rotate(p0, p1, p2);
    }

    @Override
    public void rotate(double p0) {
        to.rotate(p0);
    }

    @Override
    public void scale(double p0, double p1) {
        to.scale(p0, p1);
    }

    @Override
    public void setBackground(Color p0) {
        to.setBackground(p0);
    }

    @Override
    public void setRenderingHint(RenderingHints.Key p0, Object p1) {
        to.setRenderingHint(p0, p1);
    }

    @Override
    public void setRenderingHints(Map<?, ?> p0) {
        to.setRenderingHints(p0);
    }

    @Override
    public void setStroke(Stroke p0) {
        to.setStroke(p0);
    }

    @Override
    public void setTransform(AffineTransform p0) {
        to.setTransform(p0);
    }

    @Override
    public void shear(double p0, double p1) {
        to.shear(p0, p1);
    }

    @Override
    public void transform(AffineTransform p0) {
        to.transform(p0);
    }

    @Override
    public void translate(double p0, double p1) {
        to.translate(p0, p1);
    }

    @Override
    public void translate(int p0, int p1) {
        to.translate(p0, p1);
    }
}
