// SPDX-License-Identifier: Apache-2.0
package org.earleaf.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.AffineTransform;
import java.awt.image.AffineTransformOp;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.SplittableRandom;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cards whose discs are known; cover after the Boolean model, 1 - exp(-psi); patches of discs after its simulation. */
class CardReaderTest {
    private static final CardReader WHOLE = new CardReader(0, 50, SpreadFactor.recalled());

    @ParameterizedTest
    @CsvSource({
        "40, 400, .0490, 36.5, .05",
        "60, 250, .0290, 56.5, .04",
        "100, 400, .1181, 77, .04",
        "200, 400, .2222, 118, .04",
        // Simulated without pixels: 130.9; pixels of 21 um join discs that are nearer than one of them.
        "300, 400, .3141, 130.9, .05"
    })
    void ten_cards_of_discs_thrown_at_random(double n, double stain_um, double cover, double patches, double off) {
        SplittableRandom random = new SplittableRandom(11);
        double covers = 0;
        double counts = 0;
        double stains = 0;
        for (int k = 0; k < 10; k++) {
            CardReading reading = WHOLE.read(Cards.thrown(n, stain_um, 20_000, random));
            covers += reading.cover() / 10;
            counts += reading.counted_cm2() / 10;
            stains += reading.stains_cm2().orElseThrow() / 10;
            assertThat(reading.isCrowded()).isEqualTo(reading.cover() > .2);
            assertThat(reading.stains_cm2().orElseThrow()).isGreaterThanOrEqualTo(reading.counted_cm2());
        }
        assertThat(covers).isCloseTo(cover, within(.006));
        assertThat(counts).isCloseTo(patches, within(off * patches));
        assertThat(stains).isCloseTo(n, within(.08 * n));
    }

    private static CardPicture grid() {
        double px = Cards.DOTS_1200_UM;
        double[][] discs = new double[50][];
        for (int k = 0; k < 50; k++) {
            discs[k] = new double[] {(1000 + k % 10 * 2000) / px + .3 * (k % 3), (2500 + k / 10 * 5000) / px};
        }
        return Cards.drawn(
                (int) Math.round(20_000 / px), (int) Math.round(25_000 / px), discs, 250 / px, new SplittableRandom(2));
    }

    @Test
    void fifty_discs_that_stand_apart() {
        CardReading reading = WHOLE.read(grid());
        assertThat(reading.area_cm2()).isCloseTo(5, within(.01));
        assertThat(reading.patches()).isEqualTo(50);
        assertThat(reading.cover()).isCloseTo(.01963, within(.0015));
        assertThat(reading.scuffs()).isZero();
        CardReading.Sizes sizes = reading.sizes().orElseThrow();
        assertThat(sizes.stain_um()).isCloseTo(500, within(10.0));
        assertThat(sizes.v50_um()).isCloseTo(271, within(6.0));
        assertThat(sizes.v10_um()).isLessThanOrEqualTo(sizes.v50_um());
        // 10 drops of 271 um a square centimetre.
        assertThat(sizes.deposit_ulCm2()).isCloseTo(10 * Math.PI / 6 * .271 * .271 * .271, within(.008));
        assertThat(reading.verdict(CardUse.INSECTICIDE)).isEqualTo(CardUse.Verdict.LOW);
        assertThat(reading.verdict(CardUse.CONTACT_FUNGICIDE)).isEqualTo(CardUse.Verdict.POOR);
    }

    @Test
    void a_blank_card_stays_blank() {
        CardPicture blank = Cards.drawn(900, 900, new double[0][], 1, new SplittableRandom(4));
        CardReading reading = CardReader.usual().read(blank);
        assertThat(reading.cover()).isLessThan(.001);
        assertThat(reading.patches()).isZero();
        assertThat(reading.stains_cm2()).contains(0.0);
        assertThat(reading.sizes()).isEmpty();
    }

    @Test
    void a_paler_a_turned_and_a_pressed_picture_of_a_card_tell_the_same() throws IOException {
        CardPicture card = Cards.thrown(100, 400, 20_000, new SplittableRandom(9));
        CardReading as = WHOLE.read(card);
        CardReading turned = WHOLE.read(Cards.turned(card));
        assertThat(turned.cover()).isEqualTo(as.cover());
        assertThat(turned.patches()).isEqualTo(as.patches());
        assertThat(turned.stains_cm2().orElseThrow()).isCloseTo(as.stains_cm2().orElseThrow(), within(1e-9));
        assertThat(WHOLE.read(Cards.paler(card, .3)).cover()).isCloseTo(as.cover(), within(.007));
        assertThat(WHOLE.read(pressed(card)).cover()).isCloseTo(as.cover(), within(.007));
        // Both without a margin that holds the corners a tilted picture leaves empty.
        CardReader inner = new CardReader(2500, 50, SpreadFactor.recalled());
        assertThat(inner.read(tilted(card)).cover()).isCloseTo(inner.read(card).cover(), within(.007));
    }

    @Test
    void a_flooded_card_tells_its_cover_alone() {
        CardReading reading = WHOLE.read(Cards.thrown(600, 450, 20_000, new SplittableRandom(5)));
        assertThat(reading.cover()).isBetween(.4, 1.0);
        assertThat(reading.stains_cm2()).isEmpty();
        assertThat(reading.sizes()).isEmpty();
        assertThat(reading.verdict(CardUse.SYSTEMIC_FUNGICIDE)).isEqualTo(CardUse.Verdict.DRIPPING);
    }

    @Test
    void a_scratch_is_told_from_drops() {
        double[][] scratch = new double[60][];
        for (int k = 0; k < scratch.length; k++) {
            scratch[k] = new double[] {200 + k * 4.0, 300};
        }
        CardReading reading = WHOLE.read(Cards.drawn(700, 700, scratch, 6, new SplittableRandom(6)));
        assertThat(reading.patches()).isEqualTo(1);
        assertThat(reading.scuffs()).isEqualTo(1);
    }

    @Test
    void pictures_that_cannot_be_are_refused() {
        assertThatThrownBy(() -> new CardPicture(3, 3, new int[8], 20)).hasMessageContaining("8 pixels for 3 x 3");
        assertThatThrownBy(() -> new CardPicture(1, 1, new int[1], 0)).hasMessageContaining("pixels of 0");
        CardPicture tiny = new CardPicture(10, 10, new int[100], 20);
        assertThatThrownBy(() -> CardReader.usual().read(tiny)).hasMessageContaining("leaves nothing of the card");
    }

    private static BufferedImage image(CardPicture card) {
        BufferedImage image = new BufferedImage(card.width(), card.height(), BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, card.width(), card.height(), card.rgb(), 0, card.width());
        return image;
    }

    private static CardPicture picture(BufferedImage image) {
        int w = image.getWidth();
        int h = image.getHeight();
        return new CardPicture(w, h, image.getRGB(0, 0, w, h, null, 0, w), Cards.DOTS_1200_UM);
    }

    /** Through JPEG at a quality of 0.8. */
    private static CardPicture pressed(CardPicture card) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ImageWriteParam how = writer.getDefaultWriteParam();
        how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        how.setCompressionQuality(.8f);
        try (var out = ImageIO.createImageOutputStream(bytes)) {
            writer.setOutput(out);
            writer.write(null, new IIOImage(image(card), null, null), how);
        }
        return picture(ImageIO.read(new ByteArrayInputStream(bytes.toByteArray())));
    }

    /** By five degrees about its middle. */
    private static CardPicture tilted(CardPicture card) {
        BufferedImage from = image(card);
        BufferedImage to = new BufferedImage(card.width(), card.height(), BufferedImage.TYPE_INT_RGB);
        AffineTransform turn =
                AffineTransform.getRotateInstance(Math.toRadians(5), card.width() / 2.0, card.height() / 2.0);
        new AffineTransformOp(turn, AffineTransformOp.TYPE_BILINEAR).filter(from, to);
        return picture(to);
    }
}
