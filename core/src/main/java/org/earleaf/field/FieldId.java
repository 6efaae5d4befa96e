// SPDX-License-Identifier: Apache-2.0
package org.earleaf.field;

/** What a field is known by for good, whatever it is called: its first name, or what a folder says. */
public record FieldId(String text) {}
