export { select, type Released } from './released.js';
export {
  POLICIES,
  selectForSite,
  type Policy,
  type See,
  type Sight,
  type SiteOrder,
  type SiteSelection,
  type Unapproved,
} from './site.js';
