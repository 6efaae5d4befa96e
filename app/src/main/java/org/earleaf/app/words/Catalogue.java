// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.words;

import com.ibm.icu.text.MessageFormat;
import com.ibm.icu.text.MessagePattern;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;

/** Every text of one language by its key, as messages in ICU's format; parsed when first used. */
public final class Catalogue {
    private final Locale locale;
    private final Map<String, String> texts;
    private final Map<String, MessageFormat> parsed = new ConcurrentHashMap<>();
    private final Map<String, Set<String>> names = new ConcurrentHashMap<>();

    private Catalogue(Locale locale, Map<String, String> texts) {
        this.locale = locale;
        this.texts = texts;
    }

    /** That of {@code words/LANGUAGE-COUNTRY.properties}. */
    public static Catalogue of(Locale locale) {
        String file = "/words/" + locale.toLanguageTag() + ".properties";
        try (InputStream in = Catalogue.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("there is no catalogue " + file);
            }
            Properties read = new Properties();
            read.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            Map<String, String> texts = new HashMap<>();
            read.forEach((key, text) -> texts.put(String.valueOf(key), String.valueOf(text)));
            return new Catalogue(locale, texts);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The same keys with every text changed. */
    public Catalogue changed(UnaryOperator<String> change) {
        Map<String, String> other = new HashMap<>();
        texts.forEach((key, text) -> other.put(key, change.apply(text)));
        return new Catalogue(locale, other);
    }

    public Locale locale() {
        return locale;
    }

    public Set<String> keys() {
        return new TreeMap<>(texts).keySet();
    }

    public boolean has(String key) {
        return texts.containsKey(key);
    }

    /** The message as it stands in the file. */
    public Optional<String> findText(String key) {
        return Optional.ofNullable(texts.get(key));
    }

    /** Names of values that the message asks for, those inside of plurals and choices too. */
    Set<String> names(String key) {
        return names.computeIfAbsent(key, k -> {
            MessagePattern pattern = new MessagePattern(texts.get(k));
            Set<String> found = new TreeSet<>();
            for (int i = 0; i < pattern.countParts(); i++) {
                if (pattern.getPartType(i) == MessagePattern.Part.Type.ARG_NAME) {
                    found.add(pattern.getSubstring(pattern.getPart(i)));
                }
            }
            return found;
        });
    }

    /** The message, its marks (see {@link Marks}) already set; a copy, since formats hold state. */
    Optional<MessageFormat> find(String key) {
        String text = texts.get(key);
        if (text == null) {
            return Optional.empty();
        }
        MessageFormat once = parsed.computeIfAbsent(key, k -> new MessageFormat(Marks.set(text), locale));
        return Optional.of((MessageFormat) once.clone());
    }
}
