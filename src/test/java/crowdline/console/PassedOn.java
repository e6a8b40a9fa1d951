package crowdline.console;

import java.awt.Color;
import java.awt.Composite;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.Paint;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.BufferedImageOp;
import java.awt.image.ImageObserver;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;

/** A surface behind which there is another: what is drawn is passed on to it. */
abstract class PassedOn extends Graphics2D {
    final Graphics2D to;

    PassedOn(Graphics2D to) {
        this.to = to;
    }

    @Override
    public void clearRect(int p0, int p1, int p2, int p3) {
        to.clearRect(p0, p1, p2, p3);
    }

    @Override
    public void clip(Shape p0) {
        to.clip(p0);
    }

    @Override
    public void clipRect(int p0, int p1, int p2, int p3) {
        to.clipRect(p0, p1, p2, p3);
    }

    @Override
    public void copyArea(int p0, int p1, int p2, int p3, int p4, int p5) {
        to.copyArea(p0, p1, p2, p3, p4, p5);
    }

    @Override
    public void dispose() {
        to.dispose();
    }

    @Override
    public void draw(Shape p0) {
        to.draw(p0);
    }

    @Override
    public void drawArc(int p0, int p1, int p2, int p3, int p4, int p5) {
        to.drawArc(p0, p1, p2, p3, p4, p5);
    }

    @Override
    public void drawGlyphVector(GlyphVector p0, float p1, float p2) {
        to.drawGlyphVector(p0, p1, p2);
    }

    @Override
    public boolean drawImage(Image p0, AffineTransform p1, ImageObserver p2) {
        return to.drawImage(p0, p1, p2);
    }

    @Override
    public boolean drawImage(Image p0, int p1, int p2, Color p3, ImageObserver p4) {
        return to.drawImage(p0, p1, p2, p3, p4);
    }

    @Override
    public boolean drawImage(Image p0, int p1, int p2, int p3, int p4, Color p5, ImageObserver p6) {
        return to.drawImage(p0, p1, p2, p3, p4, p5, p6);
    }

    @Override
    public boolean drawImage(
            Image p0, int p1, int p2, int p3, int p4, int p5, int p6, int p7, int p8, Color p9, ImageObserver p10) {
        return to.drawImage(p0, p1, p2, p3, p4, p5, p6, p7, p8, p9, p10);
    }

    @Override
    public boolean drawImage(
            Image p0, int p1, int p2, int p3, int p4, int p5, int p6, int p7, int p8, ImageObserver p9) {
        return to.drawImage(p0, p1, p2, p3, p4, p5, p6, p7, p8, p9);
    }

    @Override
    public boolean drawImage(Image p0, int p1, int p2, int p3, int p4, ImageObserver p5) {
        return to.drawImage(p0, p1, p2, p3, p4, p5);
    }

    @Override
    public boolean drawImage(Image p0, int p1, int p2, ImageObserver p3) {
        return to.drawImage(p0, p1, p2, p3);
    }

    @Override
    public void drawImage(BufferedImage p0, BufferedImageOp p1, int p2, int p3) {
        to.drawImage(p0, p1, p2, p3);
    }

    @Override
    public void drawLine(int p0, int p1, int p2, int p3) {
        to.drawLine(p0, p1, p2, p3);
    }

    @Override
    public void drawOval(int p0, int p1, int p2, int p3) {
        to.drawOval(p0, p1, p2, p3);
    }

    @Override
    public void drawPolygon(int[] p0, int[] p1, int p2) {
        to.drawPolygon(p0, p1, p2);
    }

    @Override
    public void drawPolyline(int[] p0, int[] p1, int p2) {
        to.drawPolyline(p0, p1, p2);
    }

    @Override
    public void drawRenderableImage(RenderableImage p0, AffineTransform p1) {
        to.drawRenderableImage(p0, p1);
    }

    @Override
    public void drawRenderedImage(RenderedImage p0, AffineTransform p1) {
        to.drawRenderedImage(p0, p1);
    }

    @Override
    public void drawRoundRect(int p0, int p1, int p2, int p3, int p4, int p5) {
        to.drawRoundRect(p0, p1, p2, p3, p4, p5);
    }

    @Override
    public void fill(Shape p0) {
        to.fill(p0);
    }

    @Override
    public void fillArc(int p0, int p1, int p2, int p3, int p4, int p5) {
        to.fillArc(p0, p1, p2, p3, p4, p5);
    }

    @Override
    public void fillOval(int p0, int p1, int p2, int p3) {
        to.fillOval(p0, p1, p2, p3);
    }

    @Override
    public void fillPolygon(int[] p0, int[] p1, int p2) {
        to.fillPolygon(p0, p1, p2);
    }

    @Override
    public void fillRect(int p0, int p1, int p2, int p3) {
        to.fillRect(p0, p1, p2, p3);
    }

    @Override
    public void fillRoundRect(int p0, int p1, int p2, int p3, int p4, int p5) {
        to.fillRoundRect(p0, p1, p2, p3, p4, p5);
    }

    @Override
    public Shape getClip() {
        return to.getClip();
    }

    @Override
    public Rectangle getClipBounds() {
        return to.getClipBounds();
    }

    @Override
    public Color getColor() {
        return to.getColor();
    }

    @Override
    public Composite getComposite() {
        return to.getComposite();
    }

    @Override
    public Font getFont() {
        return to.getFont();
    }

    @Override
    public FontMetrics getFontMetrics(Font p0) {
        return to.getFontMetrics(p0);
    }

    @Override
    public FontRenderContext getFontRenderContext() {
        return to.getFontRenderContext();
    }

    @Override
    public void setClip(int p0, int p1, int p2, int p3) {
        to.setClip(p0, p1, p2, p3);
    }

    @Override
    public void setClip(Shape p0) {
        to.setClip(p0);
    }

    @Override
    public void setColor(Color p0) {
        to.setColor(p0);
    }

    @Override
    public void setComposite(Composite p0) {
        to.setComposite(p0);
    }

    @Override
    public void setFont(Font p0) {
        to.setFont(p0);
    }

    @Override
    public void setPaint(Paint p0) {
        to.setPaint(p0);
    }

    @Override
    public void setPaintMode() {
        to.setPaintMode();
    }

    @Override
    public void setXORMode(Color p0) {
        to.setXORMode(p0);
    }
}
