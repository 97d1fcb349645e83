export { checkFile } from './toolpathCheck.ts';

/** The place where a toolpath is checked. */
export default function ToolpathPlace() {
  return <main className="main checks tool" />;
}
