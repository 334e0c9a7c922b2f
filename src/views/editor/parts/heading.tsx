import type { ReactNode } from 'react';
import styles from './heading.module.css';

interface HeadingProps {
  readonly level?: 2 | 3;
  readonly title: string;
  /** What it is about, in a few words. */
  readonly aside?: ReactNode;
  readonly actions?: ReactNode;
}

/** A heading with a remark and buttons; never larger than 16 px, the drawing is the headline. */
export const Heading = ({ level = 2, title, aside, actions }: HeadingProps) => {
  const Tag = level === 2 ? 'h2' : 'h3';
  return (
    <div className={styles.heading}>
      <Tag>{title}</Tag>
      {aside ? <span className={styles.aside}>{aside}</span> : null}
      {actions ? <div className={styles.actions}>{actions}</div> : null}
    </div>
  );
};
