-- Whether the label allows the product from the air; empty: not entered.

alter table product add column label_by_air varchar(3) not null default '';
