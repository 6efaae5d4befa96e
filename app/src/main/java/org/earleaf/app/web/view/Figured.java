// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import org.earleaf.app.web.text.Markup;

/** Words with figures in them, and which figure says why. */
public record Figured(Figure why, Markup text) {}
